package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * One speaker's share of the amplifier's full power.
 *
 * @param watts the most the amplifier puts into this speaker
 * @param ratedWatts what the speaker takes
 */
public record SpeakerShare(At at, Amount watts, Amount ratedWatts) {}
