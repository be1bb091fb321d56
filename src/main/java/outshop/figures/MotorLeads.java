package outshop.figures;

import outshop.circuit.At;

/**
 * What is still between a decoder and a motor.
 *
 * @param electronics {@code fine}, {@code left} or unknown
 * @param suppression {@code fine}, {@code left} or unknown: a capacitor or choke
 * @param suppressors which of them, in words that fill a sentence
 */
public record MotorLeads(At at, Standing electronics, Standing suppression, String suppressors) {}
