package outshop.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import outshop.rules.Verdict;

/**
 * Finds what works in the order asked for, the best first: cells wait in a queue by the best that
 * may be in them. A combination that is better than all cells that are left is one of the best.
 *
 * <p>Several threads may run it: each takes the cell that is best of those that nobody works at.
 * What they find, and in which order, does not depend on how many they are.
 */
final class BestFirst {
  /** More cells at once would ask for too much memory. */
  private static final int MOST_WAITING = 200_000;

  private static final long WAIT_MILLIS = 50;

  private final Space space;
  private final Region region;
  private final Trials trials;
  private final Measure measure;
  private final Stop stop;
  private final boolean byWarnings;
  private final PriorityQueue<Cell> cells = new PriorityQueue<>();
  private final PriorityQueue<Ranked> works = new PriorityQueue<>();
  private final List<Cell> busy = new ArrayList<>();
  private final Set<List<Integer>> seen = ConcurrentHashMap.newKeySet();
  private final List<Found> best = new ArrayList<>();
  private boolean begun;
  private boolean complete;
  private long firstAt;
  private RuntimeException fault;

  /**
   * Combinations that nobody has looked at.
   *
   * @param rank the best that may be in it
   * @param exact whether the rank was taken from itself and not from one that held it
   */
  private record Cell(Rank rank, BitSet[] sets, boolean exact) implements Comparable<Cell> {
    @Override
    public int compareTo(Cell other) {
      return rank.compareTo(other.rank);
    }

    @Override
    public boolean equals(Object other) {
      return this == other;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(this);
    }
  }

  /** A combination that works. */
  private record Ranked(Rank rank, Found found) implements Comparable<Ranked> {
    @Override
    public int compareTo(Ranked other) {
      return rank.compareTo(other.rank);
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

  /**
   * Finds so many, unless it is to stop before.
   *
   * @param wanted the same for every thread
   */
  void run(int wanted) {
    begin();
    for (Optional<Cell> cell = take(wanted); cell.isPresent(); cell = take(wanted)) {
      try {
        look(cell.get());
        done(cell.get(), null);
      } catch (RuntimeException e) {
        done(cell.get(), e);
      }
    }
    synchronized (this) {
      if (fault != null) {
        throw fault;
      }
    }
  }

  private synchronized void begin() {
    if (!begun) {
      BitSet[] all = space.all();
      cells.add(new Cell(measure.bound(all, 0), all, true));
      begun = true;
    }
  }

  /** The cell to look at next; empty if there is no more to do. */
  private synchronized Optional<Cell> take(int wanted) {
    while (fault == null && !isEnding()) {
      settle(wanted);
      if (complete) {
        notifyAll();
        return Optional.empty();
      }
      boolean wanting =
          !cells.isEmpty()
              && (works.isEmpty() || cells.peek().rank().compareTo(works.peek().rank()) < 0);
      if (wanting) {
        busy.add(cells.peek());
        return Optional.of(cells.remove());
      }
      pause();
    }
    return Optional.empty();
  }

  /** Takes over what works and has nothing before it any more. */
  private void settle(int wanted) {
    while (best.size() < wanted && !works.isEmpty() && isNext(works.peek().rank())) {
      firstAt = best.isEmpty() ? System.nanoTime() : firstAt;
      best.add(works.remove().found());
    }
    complete = best.size() >= wanted || (cells.isEmpty() && busy.isEmpty() && works.isEmpty());
  }

  private boolean isNext(Rank rank) {
    return (cells.isEmpty() || rank.compareTo(cells.peek().rank()) <= 0)
        && busy.stream().allMatch(cell -> rank.compareTo(cell.rank()) <= 0);
  }

  private boolean isEnding() {
    return stop.isDue() || region.isHalted() || cells.size() > MOST_WAITING;
  }

  private void pause() {
    try {
      wait(WAIT_MILLIS);
    } catch (InterruptedException e) {
      stop.ask();
      Thread.currentThread().interrupt();
    }
  }

  private synchronized void done(Cell cell, RuntimeException e) {
    busy.remove(cell);
    fault = fault == null ? e : fault;
    notifyAll();
  }

  private void look(Cell cell) {
    if (cell.exact()) {
      step(cell.sets(), cell.rank());
    } else {
      refine(cell);
    }
  }

  /** Ranks a cell by itself; if it falls back, it waits again. */
  private void refine(Cell cell) {
    Optional<BitSet[]> cut = region.cut(cell.sets());
    if (cut.isPresent()) {
      Rank own = measure.bound(cut.get(), byWarnings ? region.warned().least(cut.get()) : 0);
      Rank rank = own.compareTo(cell.rank()) > 0 ? own : cell.rank();
      add(new Cell(rank, cut.get(), true));
    }
  }

  private void step(BitSet[] cell, Rank rank) {
    int[] point = measure.point(cell);
    boolean met = seen.contains(asList(point));
    Optional<Box> out = met ? Optional.empty() : region.boxes().covering(point, cell);
    if (out.isEmpty() && byWarnings && partByWarning(point, cell, rank)) {
      return;
    }
    if (out.isEmpty() && !met) {
      Trials.Single single = trials.single(point);
      out = region.ruledOut(point, single, cell);
      if (out.isEmpty()) {
        List<Verdict> verdicts = works(point, single);
        if (byWarnings) {
          region.warned().learn(point, verdicts);
          if (partByWarning(point, cell, rank)) {
            return;
          }
        }
      }
    }
    push(cell, out.orElseGet(() -> Box.of(Region.single(point), space.all(), true, "")), rank);
  }

  /** Notes a combination that works; its verdicts. */
  private List<Verdict> works(int[] point, Trials.Single single) {
    List<Object> facts = single.facts();
    List<Verdict> verdicts = trials.check(facts);
    Optional<Verdict> violation = verdicts.stream().filter(Verdict::isViolation).findFirst();
    if (violation.isPresent()) {
      throw Distrust.ofWorking(trials.piece(violation.get().rule(), point).orElseThrow());
    }
    Found found = measure.found(point, facts, verdicts);
    if (seen.add(asList(point))) {
      synchronized (this) {
        works.add(new Ranked(measure.rank(point, found), found));
        notifyAll();
      }
    }
    return verdicts;
  }

  /** Parts a cell by the widest warning at a point that is not given for all of it. */
  private boolean partByWarning(int[] point, BitSet[] cell, Rank rank) {
    Optional<Box> box = region.warned().widest(point, cell);
    if (box.isEmpty()) {
      return false;
    }
    push(cell, box.get(), rank);
    add(new Cell(rank, Region.inside(cell, box.get()), false));
    return true;
  }

  private void push(BitSet[] cell, Box box, Rank rank) {
    for (BitSet[] left : Region.without(cell, box)) {
      add(new Cell(rank, left, false));
    }
  }

  private synchronized void add(Cell cell) {
    cells.add(cell);
    notifyAll();
  }

  private static List<Integer> asList(int[] point) {
    List<Integer> list = new ArrayList<>();
    for (int choice : point) {
      list.add(choice);
    }
    return list;
  }
}
