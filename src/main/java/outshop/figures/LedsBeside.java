package outshop.figures;

import outshop.circuit.At;

/**
 * Several LEDs side by side behind one limiter.
 *
 * @param standing {@code shared}, {@code fine} where each has a resistor of its own, or unknown
 * @param names of the LEDs
 * @param limiter what they share, in words that fill a sentence
 */
public record LedsBeside(At at, Standing standing, String names, String limiter) {}
