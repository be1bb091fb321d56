package outshop.figures;

import outshop.circuit.At;

/**
 * Which way round a LED is joined.
 *
 * @param standing {@code fine}, {@code backwards} or unknown
 * @param common the pole of the common lead, {@code plus} or {@code minus}
 */
public record LedPolarity(At at, Standing standing, String common) {}
