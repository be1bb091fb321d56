package outshop.figures;

import java.util.List;
import outshop.circuit.Circuit;
import outshop.circuit.Link;

/** A circuit with other conductors, to see what some of them do. */
final class Circuits {
  private Circuits() {}

  /** The same circuit with these links alone. */
  static Circuit of(Circuit whole, List<Link> links) {
    return new Circuit(
        links,
        whole.devices(),
        whole.positions(),
        whole.hasPlug(),
        whole.hasVehicles(),
        whole.unknowns());
  }
}
