package outshop.mend;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

/**
 * Looks for the smallest sets of changes after which nothing stands that must go.
 *
 * <p>Whatever clears a fault must touch something that its rule reads. That gives three ways to try
 * little and miss nothing: faults that have no change in common need a change each, so smaller sets
 * need not be tried; the last change of a set must reach every fault that still stands, and do
 * something about those that stand as they did at first; and a set that neither clears a fault nor
 * brings one nearer is not grown on. Sets of one change come first, then of two, then of three.
 * Beyond that only the most promising sets are grown on, step by step, and what comes out is
 * thinned until no change of it can be spared.
 */
final class Search {
  /** Up to here every set is tried that may be a mend. */
  static final int THOROUGH = 3;

  /** Beyond it, so many sets are grown on at each step. */
  private static final int WIDTH = 10;

  /** Of those, so many that change the same slots. */
  private static final int ALIKE = 2;

  /** Of all checks, the share that may go into trying every set. */
  private static final double SHARE_OF_THOROUGH = 0.6;

  /** Steps without a fault less before it is given up. */
  private static final int PATIENCE = 3;

  /** An improvement of less than this, as a share of the bound, is none. */
  private static final double NOTICED = 0.01;

  private final Inspection inspection;
  private final List<Change> changes;
  private final Faults faults;
  private final RuleBook book;
  private final int limit;
  private final Side side;
  private final Inspection.Seen asItIs;
  private final Map<List<Integer>, Trial> trials = new HashMap<>();
  private final Map<String, BitSet> reach = new HashMap<>();
  private final Map<String, BitSet> helps = new HashMap<>();
  private final Trial root;
  private int checks;
  private int allUpTo;
  private int atLeast;
  private boolean cut;
  private Optional<Trial> nearest = Optional.empty();

  Search(
      Inspection inspection,
      Inspection.Seen asItIs,
      List<Change> changes,
      Faults faults,
      RuleBook book,
      int limit,
      Side side) {
    this.inspection = inspection;
    this.asItIs = asItIs;
    this.changes = List.copyOf(changes);
    this.faults = faults;
    this.book = book;
    this.limit = limit;
    this.side = side;
    this.root = trial(List.of(), asItIs);
  }

  int checks() {
    return checks;
  }

  int allUpTo() {
    return allUpTo;
  }

  boolean isCut() {
    return cut;
  }

  /** The set that clears the most and brings no new fault; empty where no set clears anything. */
  Optional<Trial> nearest() {
    return nearest;
  }

  /** As many changes are needed at least, because so many faults have none in common. */
  int atLeast() {
    return atLeast;
  }

  /** Every mend of the smallest size that was found, best first. */
  List<Trial> run() {
    atLeast = apart(root);
    for (int size = 1; size <= THOROUGH && (size <= 2 || hopeless().isEmpty()); size++) {
      List<Trial> mends = atLeast > size ? List.of() : ofSize(size);
      if (!mends.isEmpty()) {
        return mends.stream().sorted(Trial.BEST).toList();
      }
      allUpTo = cut ? allUpTo : size;
    }
    return stepByStep();
  }

  /** Every mend of so many changes. */
  private List<Trial> ofSize(int size) {
    List<Trial> layer = List.of(root);
    int most = (int) (limit * SHARE_OF_THOROUGH);
    if (size == 2) {
      learn(most);
    }
    for (int made = 1; made < size; made++) {
      List<List<Integer>> sets = new ArrayList<>();
      for (Trial trial : layer) {
        if (apart(trial) <= size - made + 1) {
          sets.addAll(grown(trial, made == 1 ? anyOf(trial) : hardest(trial)));
        }
      }
      Set<Trial> before = new HashSet<>(layer);
      layer = tried(sets, most).stream().filter(t -> isOfUse(t, before)).toList();
    }
    List<List<Integer>> last = new ArrayList<>();
    for (Trial trial : layer.stream().sorted(Trial.PROMISING).toList()) {
      last.addAll(grown(trial, allOf(trial)));
    }
    return tried(last, most).stream().filter(t -> t.standing().isEmpty()).toList();
  }

  /** Larger sets, grown from the most promising; not all of them are tried. */
  private List<Trial> stepByStep() {
    learn(limit);
    List<Trial> layer = List.of(root);
    int fewest = root.standing().size();
    int waited = 0;
    for (int size = 1;
        size <= Mender.MOST_CHANGES && waited < PATIENCE && !layer.isEmpty();
        size++) {
      List<List<Integer>> sets = new ArrayList<>();
      for (Trial trial : layer) {
        sets.addAll(grown(trial, hardest(trial)));
      }
      List<Trial> tried = tried(sets, limit);
      List<Trial> mends = tried.stream().filter(t -> t.standing().isEmpty()).toList();
      if (!mends.isEmpty()) {
        return thinned(mends);
      }
      if (tried.stream().anyMatch(t -> hopeless().containsAll(t.standing().keySet()))) {
        cut = true;
        return List.of();
      }
      int now = tried.stream().mapToInt(t -> t.standing().size()).min().orElse(fewest);
      waited = now < fewest ? 0 : waited + 1;
      fewest = Math.min(now, fewest);
      layer = mostPromising(tried);
      cut |= layer.size() < tried.size();
    }
    return List.of();
  }

  /** The most promising, but not too many that change the same things in other ways. */
  private List<Trial> mostPromising(List<Trial> tried) {
    Map<Set<String>, Integer> alike = new HashMap<>();
    List<Trial> chosen = new ArrayList<>();
    for (Trial trial : tried.stream().sorted(Trial.PROMISING).toList()) {
      boolean room = chosen.size() < WIDTH;
      if (room && alike.merge(slots(trial), 1, Integer::sum) <= ALIKE) {
        chosen.add(trial);
      }
    }
    return chosen;
  }

  private Set<String> slots(Trial trial) {
    Set<String> slots = new HashSet<>();
    trial.members().forEach(m -> slots.add(changes.get(m).slot()));
    return slots;
  }

  /** Tries the sets that were not tried yet, as far as the limit goes; each once. */
  private List<Trial> tried(List<List<Integer>> sets, int most) {
    List<List<Integer>> distinct = sets.stream().distinct().toList();
    List<List<Integer>> fresh = distinct.stream().filter(s -> !trials.containsKey(s)).toList();
    int left = Math.max(0, most - checks);
    if (fresh.size() > left) {
      fresh = fresh.subList(0, left);
      cut = true;
    }
    checks += fresh.size();
    for (Trial trial : side.each(fresh, this::trial)) {
      trials.put(trial.members(), trial);
      note(trial);
    }
    return distinct.stream().filter(trials::containsKey).map(trials::get).toList();
  }

  private List<List<Integer>> grown(Trial trial, BitSet able) {
    Set<String> taken = slots(trial);
    List<List<Integer>> sets = new ArrayList<>();
    able.stream()
        .filter(change -> !taken.contains(changes.get(change).slot()))
        .forEach(
            change -> {
              List<Integer> set = new ArrayList<>(trial.members());
              set.add(change);
              set.sort(null);
              sets.add(List.copyOf(set));
            });
    return sets;
  }

  /** The changes that touch what a fault's rule reads. */
  private BitSet able(Finding fault) {
    return reach.computeIfAbsent(
        fault.rule(),
        rule -> {
          List<String> reads = book.find(rule).map(RuleText::reads).orElse(List.of());
          BitSet able = new BitSet();
          for (int i = 0; i < changes.size(); i++) {
            able.set(i, Touches.meets(reads, changes.get(i).touches()));
          }
          return able;
        });
  }

  /** Tries every change alone, and keeps which of them do something about which fault. */
  private void learn(int most) {
    if (helps.isEmpty()) {
      List<Trial> alone = tried(grown(root, anyOf(root)), most);
      for (String key : root.standing().keySet()) {
        BitSet useful = new BitSet();
        alone.stream()
            .filter(t -> helps(t, root, key))
            .forEach(t -> useful.set(t.members().get(0)));
        helps.put(key, useful);
      }
    }
  }

  /** Faults about which no change alone does anything; for want of such the rest is cleared. */
  private Set<String> hopeless() {
    Set<String> hopeless = new HashSet<>();
    helps.forEach(
        (key, useful) -> {
          if (useful.isEmpty()) {
            hopeless.add(key);
          }
        });
    return hopeless;
  }

  /**
   * The changes that may clear a fault of a set. Where the fault stands as it did at first, that is
   * a change that did something about it alone, if there is any.
   */
  private BitSet mayClear(Trial trial, String key) {
    Finding fault = trial.standing().get(key);
    Finding first = root.standing().get(key);
    BitSet useful = helps.getOrDefault(key, new BitSet());
    boolean asAtFirst = first != null && !isEased(first, fault) && !isEased(fault, first);
    return asAtFirst && !useful.isEmpty() ? useful : able(fault);
  }

  private BitSet anyOf(Trial trial) {
    BitSet any = new BitSet();
    trial.standing().values().forEach(f -> any.or(able(f)));
    return any;
  }

  private BitSet allOf(Trial trial) {
    BitSet all = new BitSet();
    all.set(0, changes.size());
    trial.standing().keySet().forEach(key -> all.and(mayClear(trial, key)));
    return all;
  }

  /** The changes that reach the fault which the fewest reach, of those that any reaches. */
  private BitSet hardest(Trial trial) {
    Set<String> taken = slots(trial);
    BitSet fewest = new BitSet();
    Set<String> open = new LinkedHashSet<>(trial.standing().keySet());
    open.removeAll(hopeless());
    for (String key : open) {
      BitSet able = (BitSet) mayClear(trial, key).clone();
      mayClear(trial, key).stream()
          .filter(i -> taken.contains(changes.get(i).slot()))
          .forEach(able::clear);
      boolean fewer = fewest.isEmpty() || able.cardinality() < fewest.cardinality();
      fewest = fewer && !able.isEmpty() ? able : fewest;
    }
    return fewest;
  }

  /** Of the faults that stand, how many at least reach no slot in common. */
  private int apart(Trial trial) {
    List<Set<String>> slots = new ArrayList<>();
    for (Finding fault : trial.standing().values()) {
      Set<String> reached = new HashSet<>();
      able(fault).stream().forEach(i -> reached.add(changes.get(i).slot()));
      slots.add(reached);
    }
    slots.sort(Comparator.comparingInt(Set::size));
    Set<String> used = new HashSet<>();
    int apart = 0;
    for (Set<String> reached : slots) {
      if (!reached.isEmpty() && reached.stream().noneMatch(used::contains)) {
        apart++;
        used.addAll(reached);
      }
    }
    return apart;
  }

  private Trial trial(List<Integer> members) {
    return trial(members, inspection.with(of(members)));
  }

  List<Change> of(List<Integer> members) {
    return members.stream().map(changes::get).toList();
  }

  private Trial trial(List<Integer> members, Inspection.Seen now) {
    List<Change> made = of(members);
    boolean partLess = made.stream().anyMatch(c -> c instanceof Change.Remove);
    Map<String, Finding> standing = faults.standing(now, partLess);
    int warnings = count(now, Outcome.WARNING);
    int givenUp = (int) made.stream().filter(c -> !c.givesUp().isEmpty()).count();
    double past =
        standing.values().stream().mapToDouble(f -> Math.min(10, Math.max(0, f.past()))).sum();
    return new Trial(
        members,
        standing,
        warnings + givenUp,
        count(now, Outcome.CANNOT_TELL),
        Costs.difference(asItIs.plan(), now.plan()),
        past);
  }

  private static int count(Inspection.Seen now, Outcome outcome) {
    return (int) now.findings().stream().filter(f -> f.outcome() == outcome).count();
  }

  /** Whether it does something about a fault that stood in a set which it was grown from. */
  private static boolean isOfUse(Trial after, Set<Trial> before) {
    return before.stream()
        .anyMatch(b -> after.members().containsAll(b.members()) && isOfUse(after, b));
  }

  private static boolean isOfUse(Trial after, Trial before) {
    return before.standing().keySet().stream().anyMatch(key -> helps(after, before, key));
  }

  private static boolean helps(Trial after, Trial before, String key) {
    Finding now = after.standing().get(key);
    return now == null || isEased(before.standing().get(key), now);
  }

  private static boolean isEased(Finding before, Finding now) {
    return before.demand().isPresent() && now.demand().isPresent()
        ? now.past() < before.past() - NOTICED
        : !now.headline().equals(before.headline());
  }

  /** Remembers the set that clears most, if all that still stands stood before. */
  private void note(Trial trial) {
    boolean nothingNew = root.standing().keySet().containsAll(trial.standing().keySet());
    boolean clears = trial.standing().size() < root.standing().size();
    boolean nearer =
        nearest.isEmpty()
            || Comparator.comparingInt((Trial t) -> t.standing().size())
                    .thenComparing(Trial.BEST)
                    .compare(trial, nearest.get())
                < 0;
    if (nothingNew && clears && nearer) {
      nearest = Optional.of(trial);
    }
  }

  /** Without the changes that can be spared. */
  private List<Trial> thinned(List<Trial> mends) {
    Set<List<Integer>> done = new HashSet<>();
    List<Trial> thin = new ArrayList<>();
    for (Trial mend : mends.stream().sorted(Trial.BEST).limit(WIDTH).toList()) {
      Trial least = done.isEmpty() ? thinned(polished(thinned(mend))) : thinned(mend);
      if (done.add(least.members())) {
        thin.add(least);
      }
    }
    thin.sort(Trial.BEST);
    return thin;
  }

  /** With other changes of the same slots, one by one, as long as that makes it better. */
  private Trial polished(Trial mend) {
    Trial best = mend;
    boolean better = true;
    while (better && checks < limit) {
      List<List<Integer>> others = new ArrayList<>();
      for (int member : best.members()) {
        List<Integer> rest = new ArrayList<>(best.members());
        rest.remove((Integer) member);
        for (int i = 0; i < changes.size(); i++) {
          if (i != member && changes.get(i).slot().equals(changes.get(member).slot())) {
            List<Integer> set = new ArrayList<>(rest);
            set.add(i);
            set.sort(null);
            others.add(List.copyOf(set));
          }
        }
      }
      Trial before = best;
      best =
          tried(others, limit).stream()
              .filter(t -> t.standing().isEmpty() && Trial.BEST.compare(t, before) < 0)
              .min(Trial.BEST)
              .orElse(before);
      better = best != before;
    }
    return best;
  }

  private Trial thinned(Trial mend) {
    Trial least = mend;
    for (int member : mend.members()) {
      List<Integer> fewer = new ArrayList<>(least.members());
      fewer.remove((Integer) member);
      List<Integer> set = List.copyOf(fewer);
      if (!trials.containsKey(set)) {
        checks++;
        trials.put(set, trial(set));
      }
      least = trials.get(set).standing().isEmpty() ? trials.get(set) : least;
    }
    return least;
  }
}
