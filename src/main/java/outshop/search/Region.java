package outshop.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import outshop.figures.Facts;
import outshop.findings.Outcome;
import outshop.rules.Verdict;

/**
 * What is known of the space so far, and how more is learned: the boxes in which nothing works, and
 * those in which everything does.
 */
final class Region {
  /** Below this a cell is checked one by one. */
  private static final double WORTH_A_LOOK = 64;

  private static final int MOST_EXPLAINED = 3;
  private static final int PROOFS = 3;

  /** Boxes of few combinations are not kept once there are so many. */
  private static final int MOST_KEPT = 60_000;

  /** What stands for "everything works" among the rules that are not trusted. */
  static final String EVERYTHING_WORKS = "(everything works)";

  private final Space space;
  private final Trials trials;
  private final Explainer explainer;
  private final Likeness likeness;
  private final BitSet[] all;
  private final Boxes boxes;
  private final boolean looksForWorking;

  Region(Space space, Trials trials, java.util.Set<String> distrusted) {
    this.space = space;
    this.trials = trials;
    this.likeness = new Likeness(space);
    this.explainer = new Explainer(space, trials, likeness, distrusted);
    this.all = space.all();
    this.boxes = new Boxes(all);
    this.looksForWorking = !distrusted.contains(EVERYTHING_WORKS);
  }

  Boxes boxes() {
    return boxes;
  }

  Explainer explainer() {
    return explainer;
  }

  /** The box around a point that covers most of a cell: one that is known, else a new one. */
  Box around(int[] point, BitSet[] cell) {
    Optional<Box> known = boxes.covering(point, cell);
    if (known.isPresent()) {
      return known.get();
    }
    List<Verdict> verdicts = trials.check(point);
    List<Verdict> violations = verdicts.stream().filter(Verdict::isViolation).toList();
    if (violations.isEmpty()) {
      return working(point, cell, verdicts);
    }
    return ruledOut(point, cell, violations);
  }

  /** A box around a point that does not work, which also is kept. */
  Box ruledOut(int[] point, BitSet[] cell, List<Verdict> violations) {
    Box best = null;
    for (Verdict violation : violations.subList(0, Math.min(MOST_EXPLAINED, violations.size()))) {
      Box box = explainer.explain(point, violation, Outcome.VIOLATION);
      keep(box);
      best = best == null || box.share(cell) > best.share(cell) ? box : best;
    }
    return best;
  }

  private void keep(Box box) {
    if (boxes.size() < MOST_KEPT) {
      boxes.add(box);
    }
  }

  /** A box around a point that works: as much of the cell as can be told to work with it. */
  private Box working(int[] point, BitSet[] cell, List<Verdict> verdicts) {
    BitSet[] sets = single(point);
    if (looksForWorking && Space.size(cell).doubleValue() >= WORTH_A_LOOK) {
      sets = reach(point, cell, verdicts);
      prove(sets, point);
    }
    return Box.of(sets, all, true, "");
  }

  private BitSet[] reach(int[] point, BitSet[] cell, List<Verdict> verdicts) {
    Map<Map.Entry<String, String>, List<Verdict>> expected = byPlace(verdicts);
    BitSet[] alike = new BitSet[cell.length];
    List<TreeSet<String>> read = read(point);
    for (int s = 0; s < alike.length; s++) {
      alike[s] = likeness.roughlyLike(s, point[s], read.get(s), cell[s]);
    }
    if (works(alike, expected)) {
      return alike;
    }
    BitSet[] sets = single(point);
    for (int s = 0; s < sets.length; s++) {
      BitSet same = likeness.like(s, point[s], read.get(s), cell[s]);
      for (BitSet wider : List.of(alike[s], same)) {
        BitSet[] tried = sets.clone();
        tried[s] = wider;
        if (wider.cardinality() > 1 && works(tried, expected)) {
          sets = tried;
          break;
        }
      }
    }
    return sets;
  }

  private List<TreeSet<String>> read(int[] point) {
    List<TreeSet<String>> read = new ArrayList<>();
    for (int s = 0; s < point.length; s++) {
      read.add(new TreeSet<>(List.of(Likeness.ROW)));
    }
    for (int family = 0; family < Facts.families(); family++) {
      List<TreeSet<String>> one = trials.read(point, family);
      for (int s = 0; s < point.length; s++) {
        read.get(s).addAll(one.get(s));
      }
    }
    return read;
  }

  /** Whether no combination of a cell can have a violation, by the same questions as at a point. */
  private boolean works(BitSet[] cell, Map<Map.Entry<String, String>, List<Verdict>> expected) {
    for (Blend.End end : Blend.End.values()) {
      Map<Map.Entry<String, String>, List<Verdict>> found = byPlace(trials.look(cell, end));
      if (!found.keySet().equals(expected.keySet())) {
        return false;
      }
      for (Map.Entry<Map.Entry<String, String>, List<Verdict>> one : found.entrySet()) {
        if (!harmless(one.getValue(), expected.get(one.getKey()))) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean harmless(List<Verdict> found, List<Verdict> expected) {
    if (found.size() != expected.size()) {
      return false;
    }
    for (int i = 0; i < found.size(); i++) {
      Verdict verdict = found.get(i);
      boolean open =
          !verdict.wants().isEmpty() && !verdict.wants().equals(expected.get(i).wants());
      if (verdict.isViolation() || verdict.worst() == Outcome.VIOLATION || open) {
        return false;
      }
    }
    return true;
  }

  private static Map<Map.Entry<String, String>, List<Verdict>> byPlace(List<Verdict> verdicts) {
    Map<Map.Entry<String, String>, List<Verdict>> byPlace = new HashMap<>();
    for (Verdict verdict : verdicts) {
      byPlace.computeIfAbsent(Measure.key(verdict), k -> new ArrayList<>()).add(verdict);
    }
    return byPlace;
  }

  /** Checks some combinations of a box in which everything is to work. */
  private void prove(BitSet[] sets, int[] point) {
    if (Space.size(sets).bitLength() <= 1) {
      return;
    }
    Random random = new Random(java.util.Arrays.hashCode(point));
    for (int n = 0; n < PROOFS; n++) {
      int[] member = new int[sets.length];
      for (int s = 0; s < member.length; s++) {
        member[s] = Explainer.random(sets[s], random);
      }
      if (trials.check(member).stream().anyMatch(Verdict::isViolation)) {
        throw new Distrust(EVERYTHING_WORKS);
      }
    }
  }

  static BitSet[] single(int[] point) {
    BitSet[] sets = new BitSet[point.length];
    for (int s = 0; s < sets.length; s++) {
      sets[s] = new BitSet();
      sets[s].set(point[s]);
    }
    return sets;
  }

  /**
   * What is left of a cell without a box, as cells that have nothing in common. Where the box holds
   * all of the cell, nothing is left.
   */
  static List<BitSet[]> without(BitSet[] cell, Box box) {
    List<BitSet[]> left = new ArrayList<>();
    BitSet[] rest = cell.clone();
    for (int s = 0; s < cell.length; s++) {
      if (!box.holds(s, rest[s])) {
        BitSet outside = (BitSet) rest[s].clone();
        outside.andNot(box.sets()[s]);
        BitSet[] one = rest.clone();
        one[s] = outside;
        left.add(one);
        BitSet inside = (BitSet) rest[s].clone();
        inside.and(box.sets()[s]);
        rest[s] = inside;
      }
    }
    return left;
  }

  /** The part of a cell that lies in a box. */
  static BitSet[] inside(BitSet[] cell, Box box) {
    BitSet[] inside = new BitSet[cell.length];
    for (int s = 0; s < cell.length; s++) {
      inside[s] = (BitSet) cell[s].clone();
      if (box.sets()[s] != null) {
        inside[s].and(box.sets()[s]);
      }
    }
    return inside;
  }

  /**
   * A cell without the choices that known boxes rule out for all the rest of it; empty if nothing
   * is left.
   */
  Optional<BitSet[]> cut(BitSet[] cell) {
    BitSet[] cut = cell.clone();
    for (Box box : boxes.all()) {
      int bound = box.works() ? -2 : onlyBound(box, cut);
      if (bound == -1) {
        return Optional.empty();
      }
      if (bound >= 0) {
        BitSet left = (BitSet) cut[bound].clone();
        left.andNot(box.sets()[bound]);
        cut[bound] = left;
      }
    }
    return Optional.of(cut);
  }

  /** The one place at which a box does not hold all of a cell; -1 if none, -2 if several. */
  private static int onlyBound(Box box, BitSet[] cell) {
    int bound = -1;
    for (int s = 0; s < cell.length; s++) {
      if (!box.holds(s, cell[s])) {
        if (bound >= 0) {
          return -2;
        }
        bound = s;
      }
    }
    return bound;
  }
}
