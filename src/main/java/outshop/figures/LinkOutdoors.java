package outshop.figures;

import outshop.circuit.At;

/** A handset or receiver, and whether its link is meant for the open. */
public record LinkOutdoors(At at, Standing standing) {}
