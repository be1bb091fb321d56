package outshop.mend;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.ranking.Ranking;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/**
 * What must go before a plan counts as mended, held against the plan as it was.
 *
 * <p>Every violation must go (and every warning, where that is asked for). Something that could be
 * told before and cannot be told now must go as well, if the rule might find a violation there: so
 * a fault is never cleared by hiding it. A new warning is a price, not a fault.
 */
final class Faults {
  private final RuleBook book;
  private final boolean warningsToo;
  private final Map<String, Finding> before;
  private final Set<String> untoldBefore = new HashSet<>();

  Faults(RuleBook book, boolean warningsToo, Inspection.Seen asItWas) {
    this.book = book;
    this.warningsToo = warningsToo;
    this.before = keyed(asItWas.findings());
    before.forEach(
        (key, finding) -> {
          if (finding.outcome() == Outcome.CANNOT_TELL) {
            untoldBefore.add(key);
          }
        });
  }

  /**
   * Findings that are no advice and not fine, each under a key that stays the same when numbers
   * change: outcome apart, the rule, the place, and which of several there.
   */
  static Map<String, Finding> keyed(List<Finding> findings) {
    Map<String, Finding> keyed = new LinkedHashMap<>();
    Map<String, Integer> count = new HashMap<>();
    for (Finding finding : Ranking.ranked(findings)) {
      if (finding.outcome().compareTo(Outcome.CANNOT_TELL) <= 0) {
        String place =
            (finding.outcome() == Outcome.CANNOT_TELL ? "? " : "")
                + finding.rule()
                + " at "
                + finding.at().name();
        keyed.put(place + " " + count.merge(place, 1, Integer::sum), finding);
      }
    }
    return keyed;
  }

  /** What must still go, worst first, by key. */
  Map<String, Finding> standing(Inspection.Seen seen, boolean isPartLess) {
    Map<String, Finding> standing = new LinkedHashMap<>();
    keyed(seen.findings())
        .forEach(
            (key, finding) -> {
              if (mustGo(key, finding) || (isPartLess && isNewWarning(key, finding))) {
                standing.put(key, finding);
              }
            });
    return standing;
  }

  private boolean mustGo(String key, Finding finding) {
    return switch (finding.outcome()) {
      case VIOLATION -> true;
      case WARNING -> warningsToo;
      case CANNOT_TELL -> !untoldBefore.contains(key) && mayHide(finding.rule());
      case ADVICE, FINE -> false;
    };
  }

  private boolean isNewWarning(String key, Finding finding) {
    return finding.outcome() == Outcome.WARNING && !before.containsKey(key);
  }

  private boolean mayHide(String rule) {
    Outcome least = warningsToo ? Outcome.WARNING : Outcome.VIOLATION;
    return book.find(rule).filter(r -> worst(r).compareTo(least) <= 0).isPresent();
  }

  private static Outcome worst(RuleText rule) {
    Outcome worst = Outcome.FINE;
    for (var bound : rule.bounds()) {
      worst = worst.compareTo(bound.outcome()) <= 0 ? worst : bound.outcome();
    }
    for (var situation : rule.situations().values()) {
      worst = worst.compareTo(situation.outcome()) <= 0 ? worst : situation.outcome();
    }
    return worst;
  }

  /** What was found before and is gone, worst first: violations, warnings, what was untold. */
  List<Finding> cleared(Inspection.Seen now) {
    return missing(before, keyed(now.findings()));
  }

  /** What is found now and was not there before. */
  List<Finding> brought(Inspection.Seen now) {
    return missing(keyed(now.findings()), before);
  }

  private static List<Finding> missing(Map<String, Finding> of, Map<String, Finding> in) {
    List<Finding> missing = new ArrayList<>();
    of.forEach(
        (key, finding) -> {
          Finding other = in.get(key);
          if (other == null || other.outcome() != finding.outcome()) {
            missing.add(finding);
          }
        });
    return missing;
  }

  /** What is found now and was there before. */
  List<Finding> left(Inspection.Seen now) {
    List<Finding> left = new ArrayList<>(keyed(now.findings()).values());
    left.removeAll(brought(now));
    return left;
  }
}
