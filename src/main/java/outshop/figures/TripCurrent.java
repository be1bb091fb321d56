package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A pack's protection circuit, and the currents it should let pass.
 *
 * @param tripAmps where it switches off; absent where there is no such circuit
 * @param sustainedAmps the worse of slipping and cruising
 * @param peakAmps wheels blocked, or the logged start surge where that is more and lasts longer
 *     than the circuit's delay
 * @param peakMoment when that is, in words; empty where it is not known
 */
public record TripCurrent(
    At at, Amount tripAmps, Amount sustainedAmps, Amount peakAmps, String peakMoment) {

  /** The trip current that leaves a fifth in reserve. */
  public Amount neededAmps() {
    return peakAmps.times(1.2, at.name() + ": trip current with a fifth in reserve", "peak x 1.2");
  }
}
