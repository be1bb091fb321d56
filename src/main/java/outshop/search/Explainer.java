package outshop.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import outshop.findings.Outcome;
import outshop.rules.Verdict;

/**
 * Finds out how far a verdict reaches: from one combination to as large a box of combinations as
 * the same rule gives the same verdict for.
 *
 * <p>The rule is asked of parts that stand for several ({@link Blend}): with every value open but
 * the few that decide (found by halving), then with ranges of these as wide as they may be. Each
 * box is put to the proof by checking some of its combinations, its corners among them. A rule that
 * does not stand by its answer is asked no more in this way ({@link Distrust}); for it a box holds
 * only what is alike in every column that was read, and so cannot be judged otherwise.
 */
final class Explainer {
  private static final int PROOFS = 4;

  /**
   * Behind a rule's name: its blanks are not trusted. A box holds only what states the same words
   * as the point, and a number where the point does.
   */
  static final String BLANKS = " (blanks)";

  /** Behind a rule's name: its ranges of numbers are not trusted either. */
  static final String RANGES = " (ranges)";

  private final Space space;
  private final Trials trials;
  private final Likeness likeness;
  private final BitSet[] all;
  private final BitSet[] alive;
  private final Set<String> distrusted;

  /** A column of the choices for one place. */
  private record Element(int slot, String column) {}

  /** What is being explained. */
  private record Case(
      int[] point, Verdict verdict, int piece, Outcome level, List<Blend.End> ends) {
    /**
     * Whether it is so by the values alone: at the kindest end of what usual values leave open it
     * would not be. Where people are in danger that is a violation all the same.
     */
    boolean byValue() {
      return verdict.compared() && verdict.kindest().compareTo(level) > 0;
    }

    Case at(Blend.End... others) {
      return new Case(point, verdict, piece, level, List.of(others));
    }
  }

  Explainer(Space space, Trials trials, Likeness likeness, Set<String> distrusted) {
    this.space = space;
    this.trials = trials;
    this.likeness = likeness;
    this.all = space.all();
    this.alive = space.all();
    this.distrusted = distrusted;
  }

  /** The choices that are not ruled out by themselves. */
  synchronized BitSet[] alive() {
    BitSet[] copy = new BitSet[alive.length];
    for (int s = 0; s < copy.length; s++) {
      copy[s] = (BitSet) alive[s].clone();
    }
    return copy;
  }

  /** Forgets which choices are ruled out by themselves. */
  synchronized void forget() {
    BitSet[] whole = space.all();
    for (int s = 0; s < alive.length; s++) {
      alive[s] = whole[s];
    }
  }

  /**
   * The box of a verdict.
   *
   * @param level how bad the verdict must be at least over the whole box: a violation or a warning
   */
  Box explain(int[] point, Verdict verdict, Outcome level) {
    OptionalInt piece = trials.piece(verdict.rule(), point);
    return piece.isEmpty()
        ? Box.of(Region.single(point), all, false, verdict.rule())
        : explain(point, verdict, level, piece.getAsInt());
  }

  /**
   * As {@link #explain(int[], Verdict, Outcome)}.
   *
   * @param piece whose rules gave the verdict
   */
  Box explain(int[] point, Verdict verdict, Outcome level, int piece) {
    Case asked = new Case(point, verdict, piece, level, List.of(Blend.End.LOW));
    BitSet[] among = alive();
    boolean inside = true;
    for (int s = 0; s < point.length; s++) {
      inside &= among[s].get(point[s]);
    }
    among = inside ? among : space.all();
    List<TreeSet<String>> read = trials.read(point, asked.piece());
    BitSet[] sets =
        distrusted.contains(verdict.rule())
            ? alike(point, read, among)
            : reached(asked, read, stated(asked, read, among));
    prove(asked, sets);
    return boxed(sets, among, verdict.rule(), level);
  }

  private Box boxed(BitSet[] sets, BitSet[] among, String rule, Outcome level) {
    int bound = -1;
    int count = 0;
    for (int s = 0; s < sets.length; s++) {
      if (sets[s].equals(among[s])) {
        sets[s] = all[s];
      } else {
        bound = s;
        count++;
      }
    }
    if (count == 1 && level == Outcome.VIOLATION) {
      dismiss(bound, sets[bound]);
    }
    return Box.of(sets, all, false, rule);
  }

  private synchronized void dismiss(int slot, BitSet choices) {
    BitSet left = (BitSet) alive[slot].clone();
    left.andNot(choices);
    if (!left.isEmpty()) {
      alive[slot].andNot(choices);
    }
  }

  private BitSet[] alike(int[] point, List<TreeSet<String>> read, BitSet[] among) {
    BitSet[] sets = new BitSet[point.length];
    for (int s = 0; s < sets.length; s++) {
      sets[s] = likeness.like(s, point[s], read.get(s), among[s]);
    }
    return sets;
  }

  /** What may be in the box: all, or what states the same as the point if blanks do not serve. */
  private BitSet[] stated(Case asked, List<TreeSet<String>> read, BitSet[] among) {
    if (!distrusted.contains(asked.verdict().rule() + BLANKS)) {
      return among;
    }
    BitSet[] stated = new BitSet[among.length];
    for (int s = 0; s < stated.length; s++) {
      stated[s] = likeness.roughlyLike(s, asked.point()[s], read.get(s), among[s]);
    }
    return stated;
  }

  /** What is to be distrusted next of a rule: its blanks, then its ranges, then all. */
  static String next(String rule, Set<String> distrusted) {
    for (String part : List.of(BLANKS, RANGES)) {
      if (!distrusted.contains(rule + part)) {
        return rule + part;
      }
    }
    return rule;
  }

  private BitSet[] reached(Case asked, List<TreeSet<String>> read, BitSet[] among) {
    List<Element> elements = new ArrayList<>();
    for (int s = 0; s < among.length; s++) {
      TreeSet<String> differing = likeness.differing(s, among[s]);
      differing.retainAll(read.get(s));
      for (String column : differing) {
        elements.add(new Element(s, column));
      }
    }
    if (elements.isEmpty() || !holds(asked, fixed(asked, elements, among))) {
      return alike(asked.point(), read, among);
    }
    return decided(asked, elements, among)
        .or(() -> decided(asked.at(Blend.End.LOW, Blend.End.HIGH), elements, among))
        .orElseGet(() -> alike(asked.point(), read, among));
  }

  /** The box by the ends that are asked for; empty if it does not stand at the other end. */
  private Optional<BitSet[]> decided(Case asked, List<Element> elements, BitSet[] among) {
    List<Element> needed =
        holds(asked, fixed(asked, List.of(), among))
            ? List.of()
            : least(asked, among, List.of(), false, elements);
    BitSet[] narrow = fixed(asked, needed, among);
    BitSet[] wide = narrow.clone();
    boolean ranges = !distrusted.contains(asked.verdict().rule() + RANGES);
    for (Element element : ranges ? needed : List.<Element>of()) {
      widen(asked, element, needed, wide, among);
    }
    for (BitSet[] sets : List.of(wide, narrow)) {
      if (holds(asked.at(Blend.End.HIGH), sets)) {
        return Optional.of(sets);
      }
    }
    return Optional.empty();
  }

  /** The fewest elements, out of some, that must be fixed beside others; found by halving. */
  private List<Element> least(
      Case asked, BitSet[] among, List<Element> fixed, boolean grown, List<Element> open) {
    if (grown && holds(asked, fixed(asked, fixed, among))) {
      return List.of();
    }
    if (open.size() == 1) {
      return open;
    }
    List<Element> one = open.subList(0, open.size() / 2);
    List<Element> other = open.subList(open.size() / 2, open.size());
    List<Element> ofOther = least(asked, among, joined(fixed, one), true, other);
    List<Element> ofOne = least(asked, among, joined(fixed, ofOther), !ofOther.isEmpty(), one);
    return joined(ofOne, ofOther);
  }

  private static List<Element> joined(List<Element> one, List<Element> other) {
    List<Element> both = new ArrayList<>(one);
    both.addAll(other);
    return both;
  }

  /** All that is like the point in these elements. */
  private BitSet[] fixed(Case asked, List<Element> elements, BitSet[] among) {
    Map<Integer, List<String>> columns = new HashMap<>();
    for (Element element : elements) {
      columns.computeIfAbsent(element.slot(), s -> new ArrayList<>()).add(element.column());
    }
    BitSet[] sets = new BitSet[among.length];
    for (int s = 0; s < sets.length; s++) {
      sets[s] =
          columns.containsKey(s)
              ? likeness.like(s, asked.point()[s], columns.get(s), among[s])
              : among[s];
    }
    return sets;
  }

  /** Lets a number be as great, or as small, as the verdict stands. */
  private void widen(
      Case asked, Element element, List<Element> needed, BitSet[] sets, BitSet[] among) {
    int slot = element.slot();
    List<String> others = new ArrayList<>();
    for (Element other : needed) {
      if (other.slot() == slot && !other.equals(element)) {
        others.add(other.column());
      }
    }
    BitSet like = likeness.like(slot, asked.point()[slot], others, among[slot]);
    like.or(sets[slot]);
    TreeMap<Double, BitSet> byNumber = likeness.byNumber(slot, element.column(), like);
    Double own = space.part(slot, asked.point()[slot]).numbers().get(element.column());
    if (own == null || own.isNaN() || byNumber.size() < 2) {
      return;
    }
    BitSet up =
        widest(asked, sets, slot, byNumber.tailMap(own, true), byNumber.headMap(own, false));
    BitSet down =
        widest(asked, sets, slot, byNumber.headMap(own, true), byNumber.tailMap(own, false));
    BitSet best = up.cardinality() >= down.cardinality() ? up : down;
    if (best.cardinality() > sets[slot].cardinality()) {
      sets[slot] = best;
    }
  }

  /**
   * The widest set that the verdict stands for.
   *
   * @param whole what must all be in it
   * @param more what may be added, what is nearest first
   */
  private BitSet widest(
      Case asked,
      BitSet[] sets,
      int slot,
      NavigableMap<Double, BitSet> whole,
      NavigableMap<Double, BitSet> more) {
    BitSet base = union(whole.values());
    if (!holds(asked, with(sets, slot, base))) {
      return new BitSet();
    }
    List<BitSet> steps = new ArrayList<>(more.values());
    boolean nearestLast = !more.isEmpty() && more.lastKey() < whole.firstKey();
    if (nearestLast) {
      Collections.reverse(steps);
    }
    int sure = 0;
    int open = steps.size();
    while (sure < open) {
      int middle = sure == 0 && open == steps.size() ? open : (sure + open + 1) / 2;
      BitSet wider = union(steps.subList(0, middle));
      wider.or(base);
      if (holds(asked, with(sets, slot, wider))) {
        sure = middle;
      } else {
        open = middle - 1;
      }
    }
    base.or(union(steps.subList(0, sure)));
    return base;
  }

  private static BitSet union(Iterable<BitSet> sets) {
    BitSet union = new BitSet();
    sets.forEach(union::or);
    return union;
  }

  private static BitSet[] with(BitSet[] sets, int slot, BitSet other) {
    BitSet[] changed = sets.clone();
    changed[slot] = other;
    return changed;
  }

  /** Whether the rule gives the verdict for the whole cell, at the kindest end of all ranges. */
  private boolean holds(Case asked, BitSet[] cell) {
    for (Blend.End end : asked.ends()) {
      List<Verdict> found =
          asked.byValue()
              ? trials.lookByValue(cell, end, asked.piece())
              : asked.verdict().compared()
                  ? trials.comparisons(cell, end, asked.piece())
                  : trials.look(cell, end, asked.piece());
      if (found.stream().noneMatch(v -> isSame(asked, v))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(Case asked, Verdict verdict) {
    return verdict.rule().equals(asked.verdict().rule())
        && verdict.at().name().equals(asked.verdict().at().name())
        && verdict.outcome().compareTo(asked.level()) <= 0
        && verdict.kindest().compareTo(asked.level()) <= 0;
  }

  /** Checks some combinations of the box: its corners, then some at random. */
  private void prove(Case asked, BitSet[] sets) {
    Random random =
        new Random(Arrays.hashCode(asked.point()) * 31L + asked.verdict().rule().hashCode());
    for (int n = 0; n < PROOFS; n++) {
      int[] member = new int[sets.length];
      for (int s = 0; s < member.length; s++) {
        member[s] =
            switch (n) {
              case 0 -> sets[s].nextSetBit(0);
              case 1 -> sets[s].length() - 1;
              default -> random(sets[s], random);
            };
      }
      boolean stands =
          trials.check(member, asked.piece()).stream()
              .anyMatch(
                  v ->
                      v.rule().equals(asked.verdict().rule())
                          && v.outcome().compareTo(asked.level()) <= 0);
      if (!stands) {
        throw Distrust.of(next(asked.verdict().rule(), distrusted));
      }
    }
  }

  static int random(BitSet set, Random random) {
    int skip = random.nextInt(set.cardinality());
    int at = set.nextSetBit(0);
    for (int i = 0; i < skip; i++) {
      at = set.nextSetBit(at + 1);
    }
    return at;
  }
}
