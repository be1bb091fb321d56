package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The frequency on which a handset or a receiver sends, where the locomotive will run.
 *
 * @param region where that is, in words
 * @param hertz the frequency
 * @param bands the bands open there, in words
 */
public record BandUse(At at, String region, Amount hertz, String bands, Standing standing) {}
