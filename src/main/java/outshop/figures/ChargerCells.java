package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A charger for nickel cells, which finds the end of the charge from its own number of cells, and
 * the cells that it charges.
 *
 * @param at the charger
 * @param pack the pack's name, or the names of packs in series
 */
public record ChargerCells(At at, String pack, Amount madeFor, Amount cells, Standing standing) {}
