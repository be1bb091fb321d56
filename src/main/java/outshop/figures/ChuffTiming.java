package outshop.figures;

import outshop.circuit.At;

/** What times the beats of a decoder's steam sound. */
public record ChuffTiming(At at, Standing standing) {}
