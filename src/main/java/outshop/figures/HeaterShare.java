package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A smoke heater and the pack that feeds it.
 *
 * @param heaterWatts with the pack full
 * @param packWatts what the pack gives with the locomotive cruising, the heater included
 */
public record HeaterShare(At at, Amount heaterWatts, Amount packWatts) {}
