package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;

/**
 * The highest voltage on board, beside the yardsticks for what hands may touch.
 *
 * @param fullVolts of the pack, or of packs in series, off the charger
 * @param toyVolts what accessible parts of an electric toy may carry
 * @param extraLowVolts where safety extra-low voltage ends for household appliances
 */
public record WorkingVoltage(At at, Amount fullVolts, Amount toyVolts, Amount extraLowVolts) {
  /** Direct volts. Directive 2009/48/EC, Annex II, part IV (electrical properties), point 1. */
  static final double TOY_VOLTS = 24;

  /** Direct volts. IEC 60335-1:2010, 3.4.2. */
  static final double EXTRA_LOW_VOLTS = 60;

  static WorkingVoltage of(At at, Amount fullVolts) {
    return new WorkingVoltage(
        at,
        fullVolts,
        Amount.known(
            TOY_VOLTS,
            Unit.VOLTS,
            Origin.STANDARD,
            "electric toys, most direct volts",
            "directive 2009/48/EC, annex II, part IV"),
        Amount.known(
            EXTRA_LOW_VOLTS,
            Unit.VOLTS,
            Origin.STANDARD,
            "safety extra-low voltage, most direct volts",
            "IEC 60335-1:2010, 3.4.2"));
  }
}
