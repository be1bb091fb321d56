package outshop.figures;

import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * A regulator and what it feeds.
 *
 * @param lossWatts of a linear one, turned to heat
 * @param junctionCelsius of a linear one, inside; absent for a switching one, and where the maker
 *     gives only an output current
 */
public record RegulatorLoad(
    At at, Fitted part, Amount outputAmps, Amount lossWatts, Amount junctionCelsius) {}
