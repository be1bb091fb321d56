package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.Said;

/**
 * Two packs side by side.
 *
 * @param at the first of them
 * @param other the name of the other
 * @param alike whether they are of one chemistry and number of cells
 * @param fused whether each has a fuse in its branch
 * @param alwaysAmps what flows between them when both are full
 * @param unequalAmps what flows when one is full and the other empty
 * @param maxAmps what the weaker may be charged with
 */
public record PackPair(
    At at,
    String other,
    Said cellsHere,
    Said cellsThere,
    Amount countHere,
    Amount countThere,
    Standing alike,
    Standing fused,
    Amount alwaysAmps,
    Amount unequalAmps,
    Amount maxAmps) {}
