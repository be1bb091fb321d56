package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * What a fuse carries for long.
 *
 * @param doing {@code running} or {@code charging}
 * @param amps through it
 * @param ratedAmps marked on it
 */
public record FuseDuty(At at, String doing, Amount amps, Amount ratedAmps) {}
