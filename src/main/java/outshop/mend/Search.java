package outshop.mend;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;
import outshop.units.Exact;

/**
 * Looks for the smallest sets of changes after which nothing stands that must go.
 *
 * <p>Whatever clears a fault must touch something that its rule reads. So a set of changes is grown
 * by choosing one fault that still stands, the one that the fewest changes reach, and trying every
 * change that reaches it; a set that did nothing about what it was grown for is not grown on. All
 * sets of one change come first, then of two, then of three; beyond that only the most promising
 * are grown on, step by step, and what comes out is thinned until no change of it can be spared.
 */
final class Search {
  /** More changes than this are another plan. */
  static final int MOST_CHANGES = 12;

  /** Up to here every set is grown on that may lead somewhere. */
  private static final int THOROUGH = 2;

  /** Beyond it, so many. */
  private static final int WIDTH = 12;

  /** Of all checks, the share that sets of two may take. */
  private static final double SHARE_OF_TWO = 0.6;

  /** Steps without a fault less before it is given up. */
  private static final int PATIENCE = 3;

  private final Inspection inspection;
  private final List<Change> changes;
  private final Faults faults;
  private final RuleBook book;
  private final int limit;
  private final Side side;
  private final Inspection.Seen asItIs;
  private final Set<List<Integer>> seen = new HashSet<>();
  private final List<List<Integer>> reach = new ArrayList<>();
  private int checks;
  private int allUpTo;
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

  /** Every mend of the smallest size that was found, best first. */
  List<Trial> run() {
    Trial root = trial(List.of(), asItIs);
    List<Trial> layer = List.of(root);
    int fewest = root.standing().size();
    int waited = 0;
    for (int size = 1; size <= MOST_CHANGES && !layer.isEmpty(); size++) {
      List<Trial> tried = tried(layer, size);
      List<Trial> mends = tried.stream().filter(t -> t.standing().isEmpty()).toList();
      if (!mends.isEmpty()) {
        return thinned(mends, size);
      }
      tried.forEach(t -> note(root, t));
      allUpTo = cut ? allUpTo : size;
      int now = tried.stream().mapToInt(t -> t.standing().size()).min().orElse(fewest);
      waited = now < fewest ? 0 : waited + 1;
      fewest = Math.min(now, fewest);
      if (waited >= PATIENCE) {
        cut = true;
        break;
      }
      layer =
          tried.stream()
              .filter(t -> t.members().size() > 1 || isOfUse(root, t))
              .sorted(Trial.PROMISING)
              .toList();
    }
    return List.of();
  }

  private List<Trial> tried(List<Trial> layer, int size) {
    List<List<Integer>> sets = new ArrayList<>();
    List<Trial> from = layer;
    if (size > THOROUGH && from.size() > WIDTH) {
      from = from.subList(0, WIDTH);
      cut = true;
    }
    for (Trial trial : from) {
      sets.addAll(grown(trial));
    }
    int left = limit - checks;
    int share = size == THOROUGH ? (int) (left * SHARE_OF_TWO) : left;
    if (sets.size() > share) {
      sets = sets.subList(0, share);
      cut = true;
    }
    checks += sets.size();
    return side.each(sets, this::trial);
  }

  /** Every set with one change more that may clear the fault that is hardest to reach. */
  private List<List<Integer>> grown(Trial trial) {
    List<Integer> reaching = List.of();
    for (Finding finding : trial.standing().values()) {
      List<Integer> able = able(trial, finding);
      if (!able.isEmpty() && (reaching.isEmpty() || able.size() < reaching.size())) {
        reaching = able;
      }
    }
    List<List<Integer>> sets = new ArrayList<>();
    for (int change : reaching) {
      List<Integer> set = new ArrayList<>(trial.members());
      set.add(change);
      set.sort(null);
      if (seen.add(List.copyOf(set))) {
        sets.add(List.copyOf(set));
      }
    }
    return sets;
  }

  /** The changes that touch what the finding's rule reads and go together with those made. */
  private List<Integer> able(Trial trial, Finding finding) {
    List<String> reads = book.find(finding.rule()).map(RuleText::reads).orElse(List.of());
    Set<String> taken = new HashSet<>();
    trial.members().forEach(m -> taken.add(changes.get(m).slot()));
    List<Integer> able = new ArrayList<>();
    for (int i = 0; i < changes.size(); i++) {
      Change change = changes.get(i);
      if (!taken.contains(change.slot()) && Touches.meets(reads, change.touches())) {
        able.add(i);
      }
    }
    return able;
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
    int givenUp = (int) made.stream().filter(Change::isGivingUp).count();
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

  /** Whether it did something about a fault: cleared one, brought one nearer or changed its case. */
  private static boolean isOfUse(Trial before, Trial after) {
    for (Map.Entry<String, Finding> fault : before.standing().entrySet()) {
      Finding now = after.standing().get(fault.getKey());
      if (now == null || isEased(fault.getValue(), now)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isEased(Finding before, Finding now) {
    return before.demand().isPresent() && now.demand().isPresent()
        ? Exact.below(now.past(), before.past())
        : !now.headline().equals(before.headline());
  }

  /** Remembers the set that clears most, if all that still stands stood before. */
  private void note(Trial root, Trial trial) {
    boolean nothingNew = root.standing().keySet().containsAll(trial.standing().keySet());
    boolean clears = trial.standing().size() < root.standing().size();
    if (nothingNew
        && clears
        && (nearest.isEmpty()
            || trial.standing().size() < nearest.get().standing().size()
            || (trial.standing().size() == nearest.get().standing().size()
                && Trial.BEST.compare(trial, nearest.get()) < 0))) {
      nearest = Optional.of(trial);
    }
  }

  /** Without the changes that can be spared; where all smaller sets were tried there are none. */
  private List<Trial> thinned(List<Trial> mends, int size) {
    if (size <= allUpTo + 1) {
      return mends.stream().sorted(Trial.BEST).toList();
    }
    Set<List<Integer>> done = new HashSet<>();
    List<Trial> thin = new ArrayList<>();
    for (Trial mend : mends.stream().sorted(Trial.BEST).limit(WIDTH).toList()) {
      Trial least = thinned(mend);
      if (done.add(least.members())) {
        thin.add(least);
      }
    }
    thin.sort(Trial.BEST);
    return thin;
  }

  private Trial thinned(Trial mend) {
    Trial least = mend;
    for (int member : mend.members()) {
      List<Integer> fewer = new ArrayList<>(least.members());
      fewer.remove((Integer) member);
      checks++;
      Trial without = trial(List.copyOf(fewer));
      least = without.standing().isEmpty() ? without : least;
    }
    return least;
  }
}
