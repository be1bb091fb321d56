package outshop.rules;

import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.units.Exact;

/**
 * One bound of a rule: past it, the outcome.
 *
 * @param factor demand / limit at the bound: over it for a limit that may not be passed, under it
 *     for one that must be reached
 * @param over whether the bound is an upper one
 */
public record Bound(Outcome outcome, Consequence consequence, double factor, boolean over) {

  /** Whether a demand lies past this bound of a limit. A demand exactly at the bound does not. */
  public boolean passed(double demand, double limit) {
    return over ? Exact.above(demand, limit * factor) : Exact.below(demand, limit * factor);
  }
}
