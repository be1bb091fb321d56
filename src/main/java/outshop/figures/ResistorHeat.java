package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A resistor in a lamp's lead and what it turns into heat.
 *
 * @param watts pack full, lamp on
 * @param ratedWatts what it stands
 * @param fittingWatts a usual rating that leaves half in reserve
 */
public record ResistorHeat(
    At at, Amount watts, Amount ratedWatts, Amount ohms, Amount fittingWatts) {}
