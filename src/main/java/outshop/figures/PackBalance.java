package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * How the cells of a lithium pack are kept even.
 *
 * @param at the pack
 * @param cells in series
 */
public record PackBalance(At at, Amount cells, Standing standing) {}
