package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A fuse and the short circuits it must clear.
 *
 * @param openingAmps its rating, or the trip current of a resettable one
 * @param end the part at the end of the feed where a short drives the least current
 * @param leastAmps that current
 * @param mostAmps a short right at the pack
 * @param breakingAmps the most it can break
 */
public record FuseFault(
    At at,
    boolean resettable,
    Amount openingAmps,
    String end,
    Amount leastAmps,
    Amount mostAmps,
    Amount breakingAmps) {}
