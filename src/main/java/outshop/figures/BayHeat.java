package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * What is lost as heat in a closed bay, and by how much that warms it.
 *
 * @param at the bay
 * @param watts lost in its parts, the worse of cruising and slipping
 * @param riseKelvin over the surroundings; its value is the upper end of the estimate, its range
 *     the whole of it
 * @param mostKelvin what is usually put up with
 */
public record BayHeat(At at, Amount watts, Amount riseKelvin, Amount mostKelvin) {}
