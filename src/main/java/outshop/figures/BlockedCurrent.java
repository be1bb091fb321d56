package outshop.figures;

import java.util.List;
import outshop.circuit.At;
import outshop.circuit.Cases;
import outshop.units.Amount;

/**
 * A motor with its wheels held, and what else was read on it.
 *
 * @param known {@code fine} where it was measured, {@code winding-only} or unknown
 * @param measuredAmps at the test voltage
 * @param windingAmps test voltage / winding resistance: what it should be
 * @param nominalAmps scaled to the pack's nominal volts
 * @param fullAmps scaled to the full pack
 * @param cruisingAmps as measured
 * @param slippingAmps as measured
 */
public record BlockedCurrent(
    At at,
    Standing known,
    Amount measuredAmps,
    Amount windingAmps,
    Amount nominalAmps,
    Amount fullAmps,
    Amount cruisingAmps,
    Amount slippingAmps) {

  /** The greater of the measured current and that of the winding. */
  public Amount greaterAmps() {
    return Cases.greatest(List.of(measuredAmps, windingAmps));
  }

  /** The lesser of the two. */
  public Amount lesserAmps() {
    return Cases.least(List.of(measuredAmps, windingAmps));
  }
}
