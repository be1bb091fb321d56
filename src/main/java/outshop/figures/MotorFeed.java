package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A motor and the volts it gets at the top speed step, running light.
 *
 * @param fullVolts with the pack full, after the decoder's speed limit
 * @param nominalVolts the same with the pack at nominal volts
 */
public record MotorFeed(At at, Amount fullVolts, Amount nominalVolts, Amount ratedVolts) {}
