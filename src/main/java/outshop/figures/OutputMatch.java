package outshop.figures;

import outshop.circuit.At;

/**
 * A decoder or motor, and the receiver's output that is to drive it.
 *
 * @param receiver the name of the receiver
 */
public record OutputMatch(At at, String receiver, Standing standing) {}
