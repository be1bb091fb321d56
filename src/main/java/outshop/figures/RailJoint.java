package outshop.figures;

import outshop.circuit.At;

/**
 * The pickups, and what on board they are joined to.
 *
 * @param meets the terminals they meet, in words; empty if none
 * @param state the state in which they do, in words
 */
public record RailJoint(At at, String meets, String state, Standing standing) {}
