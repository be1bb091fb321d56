package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Said;

/**
 * How a charge of nickel cells ends.
 *
 * @param at the charger
 * @param pack the pack's name
 * @param rate the charge current as a share of the capacity per hour
 * @param slow the rate up to which no end is needed
 * @param ends the charger's own word
 */
public record NickelEnd(
    At at, String pack, Amount rate, Amount slow, Said ends, Standing standing) {

  /** The rate in words, with as many digits as tell it apart from the slow one. */
  public String rateWords() {
    return rate instanceof Amount.Known k && slow instanceof Amount.Known s
        ? AmountText.pair(k, s)[0]
        : "a rate not stated";
  }
}
