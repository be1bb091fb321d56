package outshop.rules;

import java.util.TreeSet;
import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.units.Amount;
import outshop.units.Want;

/**
 * How a demand stands against a limit by the bounds of a rule: the policy that every desk shares.
 *
 * @param state whether there was anything to compare
 * @param here by the values themselves
 * @param kindest at the ends of both ranges that are kindest to the demand
 * @param worst at the ends that are worst
 * @param wants what is missing, if anything is
 * @param absent what is stated not to exist, if anything is
 */
record Comparison(
    State state,
    Bound here,
    Bound kindest,
    Bound worst,
    boolean protectsPeople,
    TreeSet<Want> wants,
    String absent) {

  enum State {
    /** One of the two is stated not to exist. */
    SILENT,
    /** One of the two is missing. */
    MISSING,
    /** Fine at its values, but not for all that assumptions leave open. */
    OPEN,
    JUDGED
  }

  static final Bound FINE = new Bound(Outcome.FINE, Consequence.NUISANCE, 1, true);

  static Comparison of(RuleText rule, Amount demand, Amount limit, boolean over) {
    for (Bound bound : rule.bounds()) {
      if (bound.over() != over) {
        throw new RuleBookException(
            rule.name(), "it and its page disagree whether the limit is the most or the least");
      }
    }
    TreeSet<Want> wants = new TreeSet<>();
    for (Amount amount : new Amount[] {demand, limit}) {
      if (amount instanceof Amount.Absent absent) {
        return unjudged(State.SILENT, wants, absent.label());
      }
    }
    for (Amount amount : new Amount[] {demand, limit}) {
      if (amount instanceof Amount.Missing missing) {
        wants.addAll(missing.wants());
      }
    }
    return wants.isEmpty()
        ? judged(rule, demand.get(), limit.get(), over)
        : unjudged(State.MISSING, wants, "");
  }

  private static Comparison unjudged(State state, TreeSet<Want> wants, String absent) {
    return new Comparison(state, FINE, FINE, FINE, false, wants, absent);
  }

  private static Comparison judged(
      RuleText rule, Amount.Known demand, Amount.Known limit, boolean over) {
    if (demand.unit() != limit.unit()) {
      throw new RuleBookException(
          rule.name(), "compares " + demand.unit() + " with " + limit.unit());
    }
    Bound here = passed(rule, demand.middle(), limit.middle());
    Bound kindest =
        over ? passed(rule, demand.low(), limit.high()) : passed(rule, demand.high(), limit.low());
    Bound worst =
        over ? passed(rule, demand.high(), limit.low()) : passed(rule, demand.low(), limit.high());
    boolean open = here.outcome() == Outcome.FINE && worst.outcome().compareTo(Outcome.ADVICE) < 0;
    return new Comparison(
        open ? State.OPEN : State.JUDGED,
        here,
        kindest,
        worst,
        rule.protectsPeople(),
        new TreeSet<>(),
        "");
  }

  private static Bound passed(RuleText rule, double demand, double limit) {
    for (Bound bound : rule.bounds()) {
      if (bound.passed(demand, limit)) {
        return bound;
      }
    }
    return FINE;
  }

  /** Whether a violation would vanish at the kindest end, and nobody is in danger. */
  boolean softened() {
    return here.outcome() == Outcome.VIOLATION
        && kindest.outcome() != Outcome.VIOLATION
        && !protectsPeople;
  }

  /** How it ends; {@link Outcome#FINE} where there was nothing to compare. */
  Outcome outcome() {
    return switch (state) {
      case SILENT -> Outcome.FINE;
      case MISSING, OPEN -> Outcome.CANNOT_TELL;
      case JUDGED -> softened() ? Outcome.WARNING : here.outcome();
    };
  }
}
