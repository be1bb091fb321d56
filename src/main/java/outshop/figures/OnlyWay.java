package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A part that could lie in its bay in several ways by itself, and that the other parts in the bay
 * leave only one: every other way was tried in full.
 *
 * @param at the part
 * @param bay the bay's name
 * @param along its side along the bay's length, in metres
 * @param across its side across
 * @param up its upright side
 */
public record OnlyWay(At at, String bay, Amount along, Amount across, Amount up) {}
