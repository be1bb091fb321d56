package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A locomotive that is put away without being switched off.
 *
 * @param at the pack
 * @param days until the pack is flat
 * @param standing {@code drained}, {@code fine} where the pack switches itself off, {@code unknown}
 */
public record LeftOn(At at, Amount days, Standing standing) {}
