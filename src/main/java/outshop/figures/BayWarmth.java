package outshop.figures;

import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A part that bears only so much warmth, and the warmth of its bay.
 *
 * @param at the part
 * @param bay the bay's name
 * @param bayCelsius temperature in the bay when running
 * @param maxCelsius highest temperature of the part's surroundings
 */
public record BayWarmth(At at, Kind kind, String bay, Amount bayCelsius, Amount maxCelsius) {}
