package outshop.figures;

import outshop.circuit.At;

/**
 * Where the other lead of a lamp or heater goes.
 *
 * @param standing {@code fine}, {@code rail}, {@code short}, {@code no-return}, {@code frame} or
 *     unknown
 * @param meets what else the frame or rail meets, in words that fill a sentence
 */
public record LampReturn(At at, Standing standing, String meets) {}
