package outshop.figures;

import outshop.circuit.At;

/**
 * Whether a charger that hangs on the mains states a safety approval.
 *
 * @param at the charger
 */
public record ChargerApproval(At at, Standing standing) {}
