package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A LED and what flows through it.
 *
 * @param fullAmps pack straight off the charger, nothing else drawing current; absent where nothing
 *     limits it
 * @param nominalAmps pack at nominal volts, locomotive standing
 * @param ratedAmps the most it may carry all the time
 * @param leastAmps the least that it visibly shines at
 * @param limiter what limits the current, in words that fill a sentence
 * @param fitting the resistor for its rated current, in words that fill a sentence
 */
public record LedFeed(
    At at,
    Amount fullAmps,
    Amount nominalAmps,
    Amount ratedAmps,
    Amount leastAmps,
    String limiter,
    String fitting) {}
