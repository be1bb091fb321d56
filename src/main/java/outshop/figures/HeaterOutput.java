package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A smoke heater on a function output.
 *
 * @param amps with the pack full, its fan included
 * @param output where it hangs, such as {@code out-2 of decoder}
 * @param limitAmps what one output carries all the time
 */
public record HeaterOutput(At at, Amount amps, String output, Amount limitAmps) {}
