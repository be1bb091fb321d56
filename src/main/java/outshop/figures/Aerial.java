package outshop.figures;

import outshop.circuit.At;

/**
 * A receiver's aerial, and whether the bay screens it.
 *
 * @param bay the name of the bay; empty where it is not stated
 */
public record Aerial(At at, String bay, Standing standing) {}
