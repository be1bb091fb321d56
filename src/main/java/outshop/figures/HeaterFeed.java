package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A smoke heater and the volts it gets.
 *
 * @param fullVolts pack full, locomotive standing
 */
public record HeaterFeed(At at, Amount fullVolts, Amount ratedVolts) {}
