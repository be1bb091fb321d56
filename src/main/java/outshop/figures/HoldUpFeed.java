package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A hold-up capacitor and the most volts that charge it.
 *
 * @param fullVolts where it is wired, else at the decoder's input, pack full and no load
 * @param ratedVolts printed on it
 */
public record HoldUpFeed(At at, Amount fullVolts, Amount ratedVolts) {}
