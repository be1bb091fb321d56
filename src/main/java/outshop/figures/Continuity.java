package outshop.figures;

import outshop.circuit.At;

/**
 * Two terminals found to have continuity that should be separate.
 *
 * @param device the thing of which they are the two ends; empty if they are not
 */
public record Continuity(At at, String one, String other, String device, Standing standing) {}
