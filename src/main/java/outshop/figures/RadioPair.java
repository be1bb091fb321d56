package outshop.figures;

import outshop.circuit.At;

/**
 * A radio receiver beside another one in the same locomotive.
 *
 * @param other the name of the first one
 */
public record RadioPair(At at, String other, Standing standing) {}
