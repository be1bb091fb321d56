package outshop.figures;

import outshop.circuit.At;

/**
 * What the charger reaches with its plug in.
 *
 * @param at the jack, or the charger where there is none
 * @param pack the pack's name
 */
public record ChargerReach(At at, String pack, Standing standing) {}
