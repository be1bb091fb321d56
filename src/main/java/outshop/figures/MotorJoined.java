package outshop.figures;

import outshop.circuit.At;

/**
 * Whether a motor's leads touch anything but their drive.
 *
 * @param standing {@code fine}, {@code joined}, {@code frame-alone} or unknown
 * @param meets what they touch, in words that fill a sentence
 */
public record MotorJoined(At at, Standing standing, String meets) {}
