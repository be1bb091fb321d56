package outshop.sheets;

import java.util.Optional;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.PackEnds;
import outshop.circuit.State;
import outshop.figures.Bench;

/** How the switches have to stand for charging. */
final class ChargingStates {
  private ChargingStates() {}

  /**
   * The first state with the plug in where the charger meets the pack and the load is off both or
   * one of its poles; else the one in which the circuit charges.
   */
  static State charging(Bench bench) {
    Circuit circuit = bench.circuit();
    return circuit.states().stream()
        .filter(s -> s.plugIn() && s.coupled() && !s.onLiveRails())
        .filter(s -> charges(circuit, s) && !loaded(circuit, s))
        .findFirst()
        .orElseGet(circuit::charging);
  }

  private static boolean charges(Circuit circuit, State state) {
    Joins joins = new Joins(circuit, state);
    Optional<PackEnds> ends = PackEnds.of(circuit);
    return ends.isPresent()
        && circuit.devices(Device.Sort.CHARGER).stream()
            .anyMatch(
                c ->
                    joins.joined(c.terminal("plus"), ends.get().plus())
                        && joins.joined(c.terminal("minus"), ends.get().minus()));
  }

  /** Whether the load is joined to the pack on both poles. */
  static boolean loaded(Circuit circuit, State state) {
    Joins joins = new Joins(circuit, state);
    Optional<PackEnds> ends = PackEnds.of(circuit);
    Optional<LoadEnds> load = LoadEnds.of(circuit);
    return ends.isPresent()
        && load.isPresent()
        && joins.joined(ends.get().plus(), load.get().plus())
        && joins.joined(ends.get().minus(), load.get().minus());
  }
}
