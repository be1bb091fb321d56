package outshop.figures;

import outshop.circuit.At;

/**
 * A pack in a locomotive that has a smoke heater.
 *
 * @param at the pack
 * @param bay the bay it sits in; empty if that is not said
 * @param heaters the smoke heaters in or beside that bay, in words
 * @param standing {@code beside}, {@code inside}, {@code fine} or {@code unknown}
 */
public record NearHeat(At at, String bay, String heaters, Standing standing) {}
