package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The parts of one bay against its inside.
 *
 * @param at the bay
 * @param parts the parts put into it, in words
 * @param room the bay's inside, in words
 * @param clearance the gap kept round every part
 * @param placed how many parts were placed, with where each lies as its working; absent where none
 *     were
 * @param standing {@code one-part}, {@code volume} or {@code all-tried} where they do not go in;
 *     {@code fine}; {@code unknown}
 * @param part the part that does not go in by itself, with its size; empty where that is not it
 * @param filled what the parts with their clearance fill, in words
 * @param inside what there is for them, in words
 */
public record BayFit(
    At at,
    String parts,
    String room,
    Amount clearance,
    Amount placed,
    Standing standing,
    String part,
    String filled,
    String inside) {}
