package outshop.figures;

import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * An amplifier and the speakers on it.
 *
 * @param ohms combined impedance of all speakers
 * @param quieterDecibels how much quieter than with the rated load; below zero if louder
 */
public record SpeakerLoad(At at, Fitted decoder, Amount ohms, Amount quieterDecibels) {}
