package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The contacts of a charging jack while no plug is in.
 *
 * @param at the jack
 * @param state in which they carry the pack's voltage, in words
 * @param volts the pack's, full
 */
public record JackContacts(At at, String state, Amount volts, Standing standing) {}
