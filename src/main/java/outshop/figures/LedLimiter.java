package outshop.figures;

import outshop.circuit.At;

/**
 * Whether anything limits a LED's current.
 *
 * @param standing {@code fine}, {@code bare} or unknown
 * @param limiter what does, in words that fill a sentence
 * @param fitting the resistor for its rated current, in words that fill a sentence
 */
public record LedLimiter(At at, Standing standing, String limiter, String fitting) {}
