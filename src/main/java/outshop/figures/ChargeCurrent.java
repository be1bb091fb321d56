package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The current that a charger drives into a pack.
 *
 * @param at the charger
 * @param pack the pack's name
 * @param amps the charger's current; where packs lie side by side each may have to take all of it
 * @param maxAmps the most the pack may be charged with
 * @param usualAmps what its kind of cells usually stands
 * @param unstated how the current stands where the pack does not state a maximum
 */
public record ChargeCurrent(
    At at, String pack, Amount amps, Amount maxAmps, Amount usualAmps, Standing unstated) {

  /** Whether the pack says what it may be charged with, even if that is nothing. */
  public boolean isMaxStated() {
    return !maxAmps.isMissing();
  }
}
