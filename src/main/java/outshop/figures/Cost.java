package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * What the parts cost together.
 *
 * @param total the sum of the prices stated; parts without a price are missing from it and named
 * @param budget what it may cost; absent where none was set
 */
public record Cost(At at, Amount total, Amount budget) {}
