package outshop.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import outshop.figures.Facts;
import outshop.findings.Outcome;
import outshop.rules.Verdict;

/**
 * What is known of the space so far, and how more is learned: the boxes in which nothing works, and
 * those in which everything does.
 */
final class Region {
  private static final int MOST_EXPLAINED = 2;
  private static final int PROOFS = 3;

  /** Boxes of few combinations are not kept once there are so many. */
  private static final int MOST_KEPT = 60_000;

  private final Space space;
  private final Trials trials;
  private final Explainer explainer;
  private final Likeness likeness;
  private final BitSet[] all;
  private final Boxes boxes;
  private final Warned warned;
  private final Boxes[] clear;
  private final List<Integer> pieces = new ArrayList<>();
  private final Set<String> distrusted;
  private volatile boolean halted;

  Region(Space space, Trials trials) {
    Set<String> distrusted = ConcurrentHashMap.newKeySet();
    this.space = space;
    this.trials = trials;
    this.likeness = new Likeness(space);
    this.explainer = new Explainer(space, trials, likeness, distrusted);
    this.all = space.all();
    this.boxes = new Boxes(all);
    this.warned = new Warned(explainer);
    this.clear = new Boxes[Facts.pieces()];
    for (int piece = 0; piece < clear.length; piece++) {
      clear[piece] = new Boxes(all);
    }
    this.distrusted = distrusted;
  }

  /** Takes back what is not trusted any more. */
  void distrust(Distrust found) {
    String rule = found.rule();
    if (!distrusted.add(rule)) {
      throw new IllegalStateException(rule + " answers differently when it is asked twice");
    }
    String name = rule.replace(Explainer.BLANKS, "").replace(Explainer.RANGES, "");
    boxes.forget(name);
    warned.forget(name);
    explainer.forget();
    found.piece().ifPresent(piece -> clear[piece] = new Boxes(all));
  }

  /** What is to be distrusted next of a rule. */
  Distrust distrustOf(String rule) {
    return Distrust.of(Explainer.next(rule, distrusted));
  }

  List<String> distrusted() {
    return distrusted.stream().sorted().toList();
  }

  /** Whether everybody is to stop for now, because one of them found that it cannot go on. */
  boolean isHalted() {
    return halted;
  }

  void halt(boolean now) {
    halted = now;
  }

  Boxes boxes() {
    return boxes;
  }

  /** How far warnings reach. */
  Warned warned() {
    return warned;
  }

  /**
   * The box around a point that covers most of a cell: one in which nothing works, if the point
   * does not; else what the boxes of every piece, in which its rules find no violation, have in
   * common.
   */
  Box around(int[] point, BitSet[] cell) {
    Optional<Box> known = boxes.covering(point, cell);
    if (known.isPresent()) {
      return known.get();
    }
    BitSet[] sets = copy(cell);
    for (int piece : pieces()) {
      Optional<Box> clean = clear[piece].covering(point, cell);
      if (clean.isEmpty()) {
        Trials.Watch watch = trials.watched(point, piece);
        List<Verdict> violations = watch.verdicts().stream().filter(Verdict::isViolation).toList();
        if (!violations.isEmpty()) {
          return ruledOut(point, cell, violations, piece);
        }
        clean = Optional.of(clean(point, piece, watch));
        clear[piece].add(clean.get());
      }
      clean.get().narrow(sets);
    }
    return new Box(sets, true, "");
  }

  /** A box around a point in which nothing works; empty if the point works. */
  Optional<Box> ruledOut(int[] point, Trials.Single single, BitSet[] cell) {
    for (int piece : pieces()) {
      if (clear[piece].covering(point, cell).isEmpty()) {
        List<Verdict> violations =
            single.check(piece).stream().filter(Verdict::isViolation).toList();
        if (!violations.isEmpty()) {
          return Optional.of(ruledOut(point, cell, violations, piece));
        }
      }
    }
    return Optional.empty();
  }

  /** The pieces, first those that read least: they take less time, and rule out more at once. */
  private synchronized List<Integer> pieces() {
    if (pieces.isEmpty()) {
      int[] point = new int[all.length];
      Map<Integer, Integer> read = new HashMap<>();
      for (int piece = 0; piece < clear.length; piece++) {
        int columns = 0;
        for (Set<String> ofSlot : trials.read(point, piece)) {
          columns += ofSlot.size();
        }
        read.put(piece, columns);
        pieces.add(piece);
      }
      pieces.sort((a, b) -> Integer.compare(read.get(a), read.get(b)));
    }
    return pieces;
  }

  /**
   * A box around a point in which the rules of a piece find no violation: all that is alike in what
   * was read; and where numbers may differ as well without any harm, all that is roughly alike.
   */
  private Box clean(int[] point, int piece, Trials.Watch watch) {
    BitSet[] rough = new BitSet[point.length];
    BitSet[] same = new BitSet[point.length];
    boolean differ = false;
    for (int s = 0; s < rough.length; s++) {
      rough[s] = likeness.roughlyLike(s, point[s], watch.read().get(s), all[s]);
      same[s] = likeness.like(s, point[s], watch.read().get(s), all[s]);
      differ |= !rough[s].equals(same[s]);
    }
    if (differ && !distrusted.contains(Distrust.working(piece))) {
      Map<Map.Entry<String, String>, List<Verdict>> expected = byPlace(watch.verdicts());
      if (harmless(rough, piece, expected)) {
        prove(rough, piece, point);
        return Box.of(rough, all, true, "");
      }
      for (int s = 0; s < rough.length; s++) {
        BitSet[] tried = same.clone();
        tried[s] = rough[s];
        if (!rough[s].equals(same[s]) && harmless(tried, piece, expected)) {
          same = tried;
        }
      }
      prove(same, piece, point);
    }
    return Box.of(same, all, true, "");
  }

  private Box ruledOut(int[] point, BitSet[] cell, List<Verdict> violations, int piece) {
    Box best = null;
    for (Verdict violation : violations.subList(0, Math.min(MOST_EXPLAINED, violations.size()))) {
      Box box = explainer.explain(point, violation, Outcome.VIOLATION, piece);
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

  /** Whether a piece's rules can find no violation in a cell, asking the same as at a point. */
  private boolean harmless(
      BitSet[] cell, int piece, Map<Map.Entry<String, String>, List<Verdict>> expected) {
    for (Blend.End end : Blend.End.values()) {
      Map<Map.Entry<String, String>, List<Verdict>> found = byPlace(trials.look(cell, end, piece));
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
      boolean open = !verdict.wants().isEmpty() && !verdict.wants().equals(expected.get(i).wants());
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

  /** Checks some combinations of a box in which a piece's rules are to find no violation. */
  private void prove(BitSet[] sets, int piece, int[] point) {
    Random random = new Random(Arrays.hashCode(point) * 31L + piece);
    for (int n = 0; n < PROOFS; n++) {
      int[] member = new int[sets.length];
      for (int s = 0; s < member.length; s++) {
        member[s] = Explainer.random(sets[s], random);
      }
      if (trials.check(member, piece).stream().anyMatch(Verdict::isViolation)) {
        throw Distrust.ofWorking(piece);
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

  private static BitSet[] copy(BitSet[] cell) {
    BitSet[] copy = new BitSet[cell.length];
    for (int s = 0; s < copy.length; s++) {
      copy[s] = (BitSet) cell[s].clone();
    }
    return copy;
  }

  /** The part of a cell that lies in a box. */
  static BitSet[] inside(BitSet[] cell, Box box) {
    BitSet[] inside = copy(cell);
    box.narrow(inside);
    return inside;
  }

  /**
   * A cell without the choices that known boxes rule out for all the rest of it; empty if nothing
   * is left.
   */
  Optional<BitSet[]> cut(BitSet[] cell) {
    BitSet[] cut = cell.clone();
    for (Box box : boxes.all()) {
      int bound = onlyBound(box, cut);
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
