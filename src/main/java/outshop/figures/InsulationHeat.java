package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A wire, cable or sleeve, and the warmest place it reaches.
 *
 * @param place in words
 * @param celsius how warm it gets there
 * @param limitCelsius what its insulation stands
 */
public record InsulationHeat(At at, String place, Amount celsius, Amount limitCelsius) {}
