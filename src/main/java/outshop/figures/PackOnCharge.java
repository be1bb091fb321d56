package outshop.figures;

import outshop.circuit.At;
import outshop.units.Said;

/**
 * Whether a pack for which there is a way to be charged may be charged at all.
 *
 * @param at the pack
 * @param cells its kind of cells
 * @param way what would charge it
 */
public record PackOnCharge(At at, Said cells, String way, Standing standing) {}
