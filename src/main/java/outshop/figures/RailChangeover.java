package outshop.figures;

import outshop.circuit.At;

/**
 * A changeover switch between the rails and the power on board.
 *
 * @param rail the only rail it parts, where it parts only one
 */
public record RailChangeover(At at, String rail, Standing standing) {}
