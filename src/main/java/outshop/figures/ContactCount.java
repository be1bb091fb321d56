package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A cable or connector, and how many conductors pass it.
 *
 * @param needed as the wiring leads them through it
 */
public record ContactCount(At at, Amount needed, Amount contacts) {}
