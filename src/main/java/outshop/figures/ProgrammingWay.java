package outshop.figures;

import outshop.circuit.At;

/** How a decoder's settings can be changed once it is fitted. */
public record ProgrammingWay(At at, Standing standing) {}
