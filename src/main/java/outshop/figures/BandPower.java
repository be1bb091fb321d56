package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The power with which a handset or a receiver sends, in a band that is open to it.
 *
 * @param band in words
 */
public record BandPower(At at, String band, Amount watts, Amount limitWatts) {}
