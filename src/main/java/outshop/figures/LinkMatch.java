package outshop.figures;

import outshop.circuit.At;

/**
 * A receiver, and the handset that comes nearest to being heard by it.
 *
 * @param here what the receiver listens to, in words
 * @param there what the handset sends, in words
 */
public record LinkMatch(At at, String handset, String here, String there, Standing standing) {}
