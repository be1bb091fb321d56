package outshop.figures;

import outshop.circuit.At;
import outshop.units.Said;

/**
 * Whether a cable between vehicles, or a connector that stands for one, fits only one way round.
 */
public record CableKeying(At at, Said keyed) {}
