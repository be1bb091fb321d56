package outshop.figures;

import outshop.circuit.At;
import outshop.units.Said;

/**
 * Which way round a charger meets the pack.
 *
 * @param at the charger
 * @param centre the pole on the inner contact of its plug
 */
public record ChargerPolarity(At at, String pack, Said centre, Standing standing) {}
