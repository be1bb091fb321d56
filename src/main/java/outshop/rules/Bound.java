package outshop.rules;

import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;

/**
 * One bound of a rule: past it, the outcome.
 *
 * @param factor demand / limit at the bound: over it for a limit that may not be passed, under it
 *     for one that must be reached
 * @param over whether the bound is an upper one
 * @param headline the sentence for this bound; empty where the page's headline serves
 */
public record Bound(
    Outcome outcome, Consequence consequence, double factor, boolean over, String headline) {

  /** A bound that the page's headline serves. */
  public Bound(Outcome outcome, Consequence consequence, double factor, boolean over) {
    this(outcome, consequence, factor, over, "");
  }

  /** Whether a demand lies past this bound of a limit. A demand exactly at the bound does not. */
  public boolean passed(double demand, double limit) {
    return over ? Exact.above(demand, limit * factor) : Exact.below(demand, limit * factor);
  }

  /** {@code over 97 % of the limit}. */
  public String words() {
    return side() + AmountText.percent(factor) + " of the limit";
  }

  /** {@code over 17.5 V, 97 % of the limit}. */
  public String words(Amount.Known limit) {
    String share = factor == 1 ? "the limit" : AmountText.percent(factor) + " of the limit";
    return side() + AmountText.text(limit.value() * factor, limit.unit()) + ", " + share;
  }

  private String side() {
    return over ? "over " : "under ";
  }
}
