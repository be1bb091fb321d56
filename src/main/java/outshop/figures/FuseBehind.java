package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A fuse and the weakest conductor behind it.
 *
 * @param fuse the fuse in words
 * @param letsAmps the most it lets flow for ever: its rating, or the trip current of a resettable
 *     one
 * @param weakest the conductor, in words
 * @param weakestAmps what that conductor carries without harm
 */
public record FuseBehind(
    At at, String fuse, boolean resettable, Amount letsAmps, String weakest, Amount weakestAmps) {}
