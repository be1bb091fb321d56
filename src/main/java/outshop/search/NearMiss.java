package outshop.search;

import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.ranking.Ranking;
import outshop.rules.RuleEngine;
import outshop.rules.Verdict;

/**
 * Looks for what stands in the way: which rules, and the combination with the fewest violations.
 */
final class NearMiss {
  private static final int DRAWN = 100;
  private static final int MOST_TRIED = 200;

  private final Space space;
  private final Trials trials;
  private final RuleEngine engine;
  private int tried;

  NearMiss(Space space, Trials trials, RuleEngine engine) {
    this.space = space;
    this.trials = trials;
    this.engine = engine;
  }

  /** The nearest combination, and what stands in its way. */
  record Seen(int[] nearest, Hindrance hindrance) {}

  Seen seen() {
    Random random = new Random(1);
    BitSet[] all = space.all();
    TreeMap<String, Integer> counts = new TreeMap<>();
    int[] nearest = new int[0];
    int fewest = Integer.MAX_VALUE;
    for (int n = 0; n < DRAWN; n++) {
      int[] point = new int[all.length];
      for (int s = 0; s < point.length; s++) {
        point[s] = Explainer.random(all[s], random);
      }
      TreeSet<String> rules = new TreeSet<>();
      int violations = 0;
      for (Verdict verdict : trials.check(point)) {
        if (verdict.isViolation()) {
          rules.add(verdict.rule());
          violations++;
        }
      }
      rules.forEach(rule -> counts.merge(rule, 1, Integer::sum));
      if (violations < fewest) {
        fewest = violations;
        nearest = point;
      }
    }
    nearest = approach(nearest, fewest, all);
    List<Finding> found =
        Ranking.ranked(engine.run(trials.facts(nearest))).stream()
            .filter(f -> f.outcome() == Outcome.VIOLATION)
            .toList();
    return new Seen(nearest, new Hindrance(DRAWN, mostFirst(counts), space.parts(nearest), found));
  }

  private static Map<String, Integer> mostFirst(TreeMap<String, Integer> counts) {
    Map<String, Integer> ordered = new LinkedHashMap<>();
    counts.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .forEach(e -> ordered.put(e.getKey(), e.getValue()));
    return ordered;
  }

  /** Swaps one part after the other for one that has fewer violations, as long as there is one. */
  private int[] approach(int[] from, int violations, BitSet[] all) {
    int[] point = from.clone();
    int fewest = violations;
    boolean better = true;
    while (better && tried < MOST_TRIED) {
      better = false;
      for (int s = 0; s < all.length; s++) {
        int step = Math.max(1, all[s].cardinality() / 20);
        int[] other = point.clone();
        for (int i = 0; i < all[s].length() && tried < MOST_TRIED; i += step) {
          other[s] = i;
          tried++;
          int count = Measure.count(trials.check(other), Outcome.VIOLATION);
          if (count < fewest) {
            fewest = count;
            point = other.clone();
            better = true;
          }
        }
      }
    }
    return point;
  }
}
