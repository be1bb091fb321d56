package outshop.mutation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.rules.Bound;
import outshop.rules.RuleText;
import outshop.rules.Situation;
import outshop.units.AmountText;

/** The faults that are put into what a rule's page says. */
final class PageMutants {
  /**
   * How far a bound is moved. Values in plans have three digits, so an example just on each side of
   * a bound lies within one in a hundred of it.
   */
  private static final double STEP = 0.01;

  /** Cannot tell is no word for a bound. */
  private static final List<Outcome> OUTCOMES =
      List.of(Outcome.VIOLATION, Outcome.WARNING, Outcome.ADVICE, Outcome.FINE);

  private final RuleText page;
  private final String drl;
  private final List<Mutant> mutants = new ArrayList<>();

  private PageMutants(RuleText page, String drl) {
    this.page = page;
    this.drl = drl;
  }

  static List<Mutant> of(RuleText page, String drl) {
    PageMutants mutants = new PageMutants(page, drl);
    for (int i = 0; i < page.bounds().size(); i++) {
      mutants.bound(i);
    }
    page.situations().values().forEach(mutants::situation);
    mutants.protection();
    return mutants.mutants;
  }

  private void bound(int index) {
    Bound bound = page.bounds().get(index);
    double outward = bound.factor() * (bound.over() ? 1 + STEP : 1 - STEP);
    double inward = bound.factor() * (bound.over() ? 1 - STEP : 1 + STEP);
    put(Fault.BOUND_OUTWARD, index, bound, moved(bound, outward));
    put(Fault.BOUND_INWARD, index, bound, moved(bound, inward));
    put(Fault.BOUND_TURNED, index, bound, turned(bound));
    add(Fault.BOUND_REMOVED, words(bound), withBounds(without(index)));
    for (Outcome outcome : neighbours(OUTCOMES, bound.outcome())) {
      Bound changed = changed(bound, outcome, bound.consequence());
      put(Fault.OUTCOME_CHANGED, index, bound, changed);
    }
    for (Consequence consequence : neighbours(List.of(Consequence.values()), bound.consequence())) {
      Bound changed = changed(bound, bound.outcome(), consequence);
      put(Fault.CONSEQUENCE_CHANGED, index, bound, changed);
    }
  }

  private static Bound moved(Bound bound, double factor) {
    return new Bound(bound.outcome(), bound.consequence(), factor, bound.over(), bound.headline());
  }

  private static Bound turned(Bound bound) {
    return new Bound(
        bound.outcome(), bound.consequence(), bound.factor(), !bound.over(), bound.headline());
  }

  private static Bound changed(Bound bound, Outcome outcome, Consequence consequence) {
    return new Bound(outcome, consequence, bound.factor(), bound.over(), bound.headline());
  }

  /** A page must have a bound; the only one is put where nothing passes it. */
  private List<Bound> without(int index) {
    List<Bound> bounds = new ArrayList<>(page.bounds());
    Bound bound = bounds.remove(index);
    return bounds.isEmpty()
        ? List.of(moved(bound, bound.over() ? Double.POSITIVE_INFINITY : 0))
        : bounds;
  }

  private void put(Fault fault, int index, Bound bound, Bound changed) {
    List<Bound> bounds = new ArrayList<>(page.bounds());
    bounds.set(index, changed);
    add(fault, words(bound) + " -> " + words(changed), withBounds(bounds));
  }

  private void situation(Situation situation) {
    Map<String, Situation> rest = new LinkedHashMap<>(page.situations());
    rest.remove(situation.name());
    add(Fault.SITUATION_REMOVED, situation.name(), withSituations(rest));
    for (Outcome outcome : neighbours(OUTCOMES, situation.outcome())) {
      put(
          Fault.OUTCOME_CHANGED,
          situation.outcome().words() + " -> " + outcome.words(),
          new Situation(situation.name(), outcome, situation.consequence(), situation.headline()));
    }
    for (Consequence consequence :
        neighbours(List.of(Consequence.values()), situation.consequence())) {
      put(
          Fault.CONSEQUENCE_CHANGED,
          situation.consequence().word() + " -> " + consequence.word(),
          new Situation(situation.name(), situation.outcome(), consequence, situation.headline()));
    }
  }

  private void put(Fault fault, String change, Situation changed) {
    Map<String, Situation> situations = new LinkedHashMap<>(page.situations());
    situations.put(changed.name(), changed);
    add(fault, changed.name() + ": " + change, withSituations(situations));
  }

  private void protection() {
    boolean violation = page.bounds().stream().anyMatch(b -> b.outcome() == Outcome.VIOLATION);
    RuleText flipped = copy(page.bounds(), page.situations(), !page.protectsPeople());
    add(
        violation ? Fault.PROTECTION_FLIPPED : Fault.PROTECTION_WITHOUT_VIOLATION,
        page.protectsPeople() ? "yes -> no" : "no -> yes",
        flipped);
  }

  /** The words beside one in an ordered list: one or two. */
  private static <T> List<T> neighbours(List<T> all, T one) {
    int at = all.indexOf(one);
    List<T> beside = new ArrayList<>();
    if (at > 0) {
      beside.add(all.get(at - 1));
    }
    if (at + 1 < all.size()) {
      beside.add(all.get(at + 1));
    }
    return beside;
  }

  /** The page with every bound turned: over for under. */
  static RuleText turned(RuleText page) {
    List<Bound> bounds = page.bounds().stream().map(PageMutants::turned).toList();
    return new PageMutants(page, "").withBounds(bounds);
  }

  private RuleText withBounds(List<Bound> bounds) {
    return copy(bounds, page.situations(), page.protectsPeople());
  }

  private RuleText withSituations(Map<String, Situation> situations) {
    return copy(page.bounds(), situations, page.protectsPeople());
  }

  private RuleText copy(
      List<Bound> bounds, Map<String, Situation> situations, boolean protectsPeople) {
    return new RuleText(
        page.name(),
        page.title(),
        List.copyOf(bounds),
        Collections.unmodifiableMap(new LinkedHashMap<>(situations)),
        protectsPeople,
        page.basis(),
        page.source(),
        page.headline(),
        page.fine(),
        page.why(),
        page.cures());
  }

  private void add(Fault fault, String what, RuleText changed) {
    mutants.add(new Mutant(page.name(), fault, what, changed, drl));
  }

  private static String words(Bound bound) {
    return bound.outcome().words()
        + (bound.over() ? " over " : " under ")
        + AmountText.percent(bound.factor())
        + " "
        + bound.consequence().word();
  }
}
