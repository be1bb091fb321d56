package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A contact and the current it carries.
 *
 * @param contact the contact's own name
 * @param ratingAmps what it may carry there, with its neighbours loaded as they are
 * @param neighbours how its neighbours are loaded, in words
 */
public record ContactLoad(
    At at, Sort sort, String contact, Amount amps, Amount ratingAmps, String neighbours) {

  /** The rating that leaves a quarter in reserve. */
  public Amount neededAmps() {
    return Demands.withReserve(contact, amps);
  }

  /** What kind of contact it is. */
  public enum Sort {
    /** Of a jack: opens when the plug goes in. */
    BREAK,
    /** Between charging plug and jack. */
    CHARGING,
    /** Of a connector or of a cable between vehicles. */
    MATED
  }
}
