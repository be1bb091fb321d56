package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The lead from a pack to its fuse.
 *
 * @param pack the pack's name
 * @param lengthMetres along the wire
 * @param longestMetres what it may be
 */
public record FuseLead(At at, String pack, Amount lengthMetres, Amount longestMetres) {}
