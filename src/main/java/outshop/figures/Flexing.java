package outshop.figures;

import outshop.circuit.At;

/**
 * A wire or cable where something moves while the locomotive runs.
 *
 * @param wire what would flex, in words
 */
public record Flexing(At at, String wire, Standing standing) {}
