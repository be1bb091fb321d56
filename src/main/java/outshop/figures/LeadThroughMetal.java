package outshop.figures;

import outshop.circuit.At;

/** A part whose leads pass a metal plate. */
public record LeadThroughMetal(At at, Standing standing) {}
