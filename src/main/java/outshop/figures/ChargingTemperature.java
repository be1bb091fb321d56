package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * Between which temperatures the plan's packs may be charged.
 *
 * @param at the pack
 * @param standing {@code lithium} or {@code other}
 */
public record ChargingTemperature(At at, Amount lowest, Amount highest, Standing standing) {}
