package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The highest function output of a decoder that the plan uses.
 *
 * @param highest its number
 * @param there how many the decoder has
 */
public record OutputNumber(At at, Amount highest, Amount there) {}
