package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A fuse and the pack it guards.
 *
 * @param ratedAmps marked on the fuse
 * @param peakAmps what the pack may give for a short while; the sum of several that feed it
 */
public record FuseAndPack(At at, Amount ratedAmps, Amount peakAmps) {}
