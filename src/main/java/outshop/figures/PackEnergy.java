package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The energy of a lithium pack, by which carriers judge it.
 *
 * @param at the pack
 * @param freely what a passenger may take without asking
 * @param most what a passenger may take at all
 */
public record PackEnergy(At at, Amount wattHours, Amount freely, Amount most) {}
