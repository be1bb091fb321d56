package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A short overload of a fuse.
 *
 * @param doing {@code at a start} or {@code with the wheels blocked}
 * @param amps through it
 * @param lastsSeconds how long
 * @param holdsSeconds how long the fuse's standard promises that it holds this current
 */
public record FuseSurge(
    At at, String doing, Amount amps, Amount lastsSeconds, Amount holdsSeconds) {}
