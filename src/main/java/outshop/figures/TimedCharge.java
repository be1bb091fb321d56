package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A charge of nickel cells that only a timer ends.
 *
 * @param at the charger
 * @param pack the pack's name
 * @param putInAh what the charger puts in until its timer ends
 * @param mostAh what such cells usually get from empty to full
 */
public record TimedCharge(At at, String pack, Amount putInAh, Amount mostAh) {}
