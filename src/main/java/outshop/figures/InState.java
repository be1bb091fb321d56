package outshop.figures;

import java.util.List;
import outshop.circuit.Circuit;
import outshop.circuit.Joins;
import outshop.circuit.State;

/** One state of the circuit, with what is joined to what in it. */
record InState(State state, Joins joins) {

  /** Every state, the running state first. */
  static List<InState> all(Circuit circuit) {
    return circuit.states().stream().map(s -> new InState(s, new Joins(circuit, s))).toList();
  }
}
