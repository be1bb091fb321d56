package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * What wires, contacts, fuse and switch lose between pack and decoder.
 *
 * @param at the decoder, or the receiver where there is no decoder
 * @param lostVolts out and back, pack at nominal volts, the worse of cruising and slipping
 * @param moment which of the two it is, in words
 * @param packVolts nominal
 */
public record LeadLoss(At at, Amount lostVolts, String moment, Amount packVolts) {}
