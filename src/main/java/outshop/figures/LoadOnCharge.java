package outshop.figures;

import outshop.circuit.At;

/**
 * What becomes of a load while the pack charges.
 *
 * @param at the load
 * @param parting the switch positions that part it, in words
 */
public record LoadOnCharge(At at, String parting, Standing standing) {}
