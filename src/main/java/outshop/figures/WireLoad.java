package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The busiest wire of one gauge.
 *
 * @param gauge in words, such as {@code 20 AWG}
 * @param moment when it carries that, in words
 * @param ampacityAmps what a single wire of the gauge carries inside equipment
 */
public record WireLoad(At at, String gauge, Amount amps, String moment, Amount ampacityAmps) {}
