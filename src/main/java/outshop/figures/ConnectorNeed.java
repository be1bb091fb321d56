package outshop.figures;

import outshop.circuit.At;

/** A connector, and whether anything ever parts there. */
public record ConnectorNeed(At at, Standing standing) {}
