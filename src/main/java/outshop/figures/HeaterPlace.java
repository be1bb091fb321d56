package outshop.figures;

import outshop.circuit.At;

/**
 * A smoke heater and where it sits against a pack.
 *
 * @param standing {@code fine}, {@code beside} or unknown
 * @param pack the pack's name
 * @param bay the bay it sits in
 */
public record HeaterPlace(At at, Standing standing, String pack, String bay) {}
