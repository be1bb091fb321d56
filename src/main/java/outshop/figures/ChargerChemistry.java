package outshop.figures;

import outshop.circuit.At;
import outshop.units.Said;

/**
 * A charger and a pack it is to charge: for which kind of cells either is made.
 *
 * @param at the charger
 * @param pack the pack's name
 */
public record ChargerChemistry(At at, String pack, Said charger, Said cells, Standing standing) {}
