package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.Said;

/**
 * Two or more speakers on one amplifier.
 *
 * @param most of the amplifier's power, the share that the hardest-worked speaker gets
 * @param even the share each would get if all were alike
 * @param polarity whether their cones move the same way
 */
public record SpeakerPair(At at, Amount most, Amount even, Said polarity) {}
