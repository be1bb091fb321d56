package outshop.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import outshop.findings.Outcome;
import outshop.rules.Verdict;

/**
 * Finds what works in the order asked for, the best first: cells wait in a queue by the best that
 * may be in them. What comes out of the queue as a combination is better than all that is left.
 */
final class BestFirst {
  /** More cells at once would ask for too much memory. */
  private static final int MOST_WAITING = 200_000;

  private final Space space;
  private final Region region;
  private final Trials trials;
  private final Measure measure;
  private final Stop stop;
  private final boolean byWarnings;
  private final PriorityQueue<Waiting> queue = new PriorityQueue<>();
  private final Map<Map.Entry<String, String>, List<Box>> warnings = new HashMap<>();
  private final Set<List<Integer>> seen = new HashSet<>();
  private final List<Found> best = new ArrayList<>();
  private boolean complete;
  private long firstAt;

  /**
   * A cell, or a combination that works.
   *
   * @param exact whether a cell's rank was taken from itself and not from one that held it
   */
  private record Waiting(Rank rank, BitSet[] cell, Optional<Found> found, boolean exact)
      implements Comparable<Waiting> {
    @Override
    public int compareTo(Waiting other) {
      int byRank = rank.compareTo(other.rank);
      return byRank != 0 ? byRank : Boolean.compare(found.isEmpty(), other.found.isEmpty());
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Waiting w && compareTo(w) == 0;
    }

    @Override
    public int hashCode() {
      return rank.hashCode();
    }
  }

  BestFirst(Space space, Region region, Trials trials, Order order, Stop stop) {
    this.space = space;
    this.region = region;
    this.trials = trials;
    this.measure = new Measure(order, space, trials);
    this.stop = stop;
    this.byWarnings = order == Order.WARNINGS;
  }

  /** The best so far, each with nothing better left out. */
  synchronized List<Found> best() {
    return List.copyOf(best);
  }

  /** When the first was found, by {@link System#nanoTime()}; 0 before that. */
  synchronized long firstAt() {
    return firstAt;
  }

  /** Whether as many were found as were asked for, or all there are. */
  synchronized boolean isComplete() {
    return complete;
  }

  /** Finds so many, unless it is to stop before. */
  void run(int wanted) {
    BitSet[] all = space.all();
    queue.add(new Waiting(measure.bound(all, 0), all, Optional.empty(), true));
    while (!queue.isEmpty() && best().size() < wanted) {
      if (stop.isDue() || region.isHalted() || queue.size() > MOST_WAITING) {
        return;
      }
      Waiting next = queue.remove();
      if (next.found().isPresent()) {
        synchronized (this) {
          firstAt = best.isEmpty() ? System.nanoTime() : firstAt;
          best.add(next.found().get());
        }
      } else if (next.exact()) {
        step(next.cell(), next.rank());
      } else {
        refine(next);
      }
    }
    synchronized (this) {
      complete = true;
    }
  }

  /** Ranks a cell by itself; if it falls back, it waits again. */
  private void refine(Waiting waiting) {
    Optional<BitSet[]> cut = region.cut(waiting.cell());
    if (cut.isPresent()) {
      Rank own = measure.bound(cut.get(), leastWarnings(cut.get()));
      Rank rank = own.compareTo(waiting.rank()) > 0 ? own : waiting.rank();
      queue.add(new Waiting(rank, cut.get(), Optional.empty(), true));
    }
  }

  private void step(BitSet[] cell, Rank rank) {
    int[] point = measure.point(cell);
    Box box = seen.contains(asList(point)) ? null : known(point, cell).orElse(null);
    if (box == null) {
      box = Box.of(Region.single(point), space.all(), true, "");
      if (seen.add(asList(point))) {
        Optional<Box> out = region.ruledOut(point, cell);
        if (out.isPresent()) {
          push(cell, out.get(), rank);
          return;
        }
        List<Object> facts = trials.facts(point);
        List<Verdict> verdicts = trials.check(facts);
        if (verdicts.stream().anyMatch(Verdict::isViolation)) {
          throw new Distrust(Region.EVERYTHING_WORKS);
        }
        Found found = measure.found(point, facts, verdicts);
        queue.add(
            new Waiting(
                measure.rank(point, found), Region.single(point), Optional.of(found), true));
        if (byWarnings) {
          Optional<Box> warned = warned(point, cell, verdicts);
          if (warned.isPresent()) {
            push(cell, warned.get(), rank);
            again(Region.inside(cell, warned.get()), rank);
            return;
          }
        }
      }
    }
    push(cell, box, rank);
  }

  /** A box around the point in which nothing works, if one is known. */
  private Optional<Box> known(int[] point, BitSet[] cell) {
    return region.boxes().ruledOut(point, cell);
  }

  private void push(BitSet[] cell, Box box, Rank rank) {
    for (BitSet[] left : Region.without(cell, box)) {
      again(left, rank);
    }
  }

  private void again(BitSet[] cell, Rank rank) {
    queue.add(new Waiting(rank, cell, Optional.empty(), false));
  }

  /** How many warnings every combination of a cell has, as far as it is known. */
  private int leastWarnings(BitSet[] cell) {
    int least = 0;
    for (List<Box> boxes : warnings.values()) {
      for (Box box : boxes) {
        if (box.holds(cell)) {
          least++;
          break;
        }
      }
    }
    return least;
  }

  /** Finds out how far the warnings at a point reach; the widest that does not hold the cell. */
  private Optional<Box> warned(int[] point, BitSet[] cell, List<Verdict> verdicts) {
    Box widest = null;
    for (Verdict verdict : verdicts) {
      if (verdict.outcome() != Outcome.WARNING) {
        continue;
      }
      List<Box> known = warnings.computeIfAbsent(Measure.key(verdict), k -> new ArrayList<>());
      if (known.stream().noneMatch(b -> b.holds(point))) {
        known.add(region.explainer().explain(point, verdict, Outcome.WARNING));
      }
      for (Box box : known) {
        boolean parts = box.holds(point) && !box.holds(cell);
        if (parts && (widest == null || box.share(cell) > widest.share(cell))) {
          widest = box;
        }
      }
    }
    return Optional.ofNullable(widest);
  }

  private static List<Integer> asList(int[] point) {
    List<Integer> list = new ArrayList<>();
    for (int choice : point) {
      list.add(choice);
    }
    return list;
  }
}
