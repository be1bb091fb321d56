package outshop.figures;

import java.util.Optional;
import outshop.circuit.Gauge;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * A soldered joint of two wires of one sort, as a sleeve has to pass over it.
 *
 * @param across its diameter, in metres
 * @param insulation outer diameter of the wire, in metres
 */
public record Joint(Amount across, Amount insulation) {
  /**
   * A stranded wire is about 15 % thicker than a solid one of the same gauge, and in a soldered
   * joint two lie side by side. Common practice, no source.
   */
  private static final double OF_SOLID = 2 * 1.15;

  public static Joint of(Fitted wire) {
    Amount insulation = wire.amount("insulation_outer_mm");
    Amount across =
        Amount.computed(
            wire.name() + ": joint",
            Unit.METRES,
            "the larger of its insulation and 2 x 1.15 x its solid diameter",
            v -> Math.max(v[0], OF_SOLID * Gauge.diameterMm(v[1]) / 1000),
            insulation,
            WireFitFigures.gauge(Optional.of(wire)));
    return new Joint(across, insulation);
  }
}
