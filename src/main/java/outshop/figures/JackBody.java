package outshop.figures;

import outshop.circuit.At;

/**
 * What the body of a jack joins.
 *
 * @param at the jack
 * @param meets what else the frame joins, in words
 */
public record JackBody(At at, String meets, Standing standing) {}
