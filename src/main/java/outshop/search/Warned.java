package outshop.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.findings.Outcome;
import outshop.rules.Verdict;

/**
 * How far warnings reach: for each rule and place the boxes in which it warns. Threads share one.
 */
final class Warned {
  private final Explainer explainer;
  private final Map<Map.Entry<String, String>, List<Box>> boxes = new HashMap<>();

  Warned(Explainer explainer) {
    this.explainer = explainer;
  }

  /** Leaves out the boxes that rest on a rule. */
  synchronized void forget(String rule) {
    boxes.keySet().removeIf(key -> key.getKey().equals(rule));
  }

  /** How many warnings every combination of a cell has, as far as it is known. */
  synchronized int least(BitSet[] cell) {
    return (int)
        boxes.values().stream().filter(some -> some.stream().anyMatch(b -> b.holds(cell))).count();
  }

  /** Of the known boxes that hold a point and not all of a cell, the widest. */
  synchronized Optional<Box> widest(int[] point, BitSet[] cell) {
    Box widest = null;
    for (List<Box> some : boxes.values()) {
      for (Box box : some) {
        boolean parts = box.holds(point) && !box.holds(cell);
        if (parts && (widest == null || box.share(cell) > widest.share(cell))) {
          widest = box;
        }
      }
    }
    return Optional.ofNullable(widest);
  }

  /** Finds out how far the warnings at a point reach, where that is not known. */
  void learn(int[] point, List<Verdict> verdicts) {
    for (Verdict verdict : verdicts) {
      if (verdict.outcome() == Outcome.WARNING && !isKnown(point, verdict)) {
        Box box = explainer.explain(point, verdict, Outcome.WARNING);
        add(verdict, box);
      }
    }
  }

  private synchronized boolean isKnown(int[] point, Verdict verdict) {
    return boxes.getOrDefault(Measure.key(verdict), List.of()).stream()
        .anyMatch(b -> b.holds(point));
  }

  private synchronized void add(Verdict verdict, Box box) {
    boxes.computeIfAbsent(Measure.key(verdict), k -> new ArrayList<>()).add(box);
  }
}
