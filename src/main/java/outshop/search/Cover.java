package outshop.search;

import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * Counts what works, without going through it one by one: takes a point of what is left, finds the
 * box around it, and goes on with what the box leaves. In the end every combination lies in a box.
 */
final class Cover {
  private final Region region;
  private final Measure measure;
  private final Stop stop;
  private final Deque<BitSet[]> open = new ArrayDeque<>();
  private BigInteger works = BigInteger.ZERO;
  private BigInteger considered = BigInteger.ZERO;
  private int busy;
  private RuntimeException fault;

  Cover(Space space, Region region, Measure measure, Stop stop) {
    this.region = region;
    this.measure = measure;
    this.stop = stop;
    open.push(space.all());
  }

  synchronized BigInteger works() {
    return works;
  }

  synchronized BigInteger considered() {
    return considered;
  }

  synchronized boolean isComplete() {
    return open.isEmpty() && busy == 0 && fault == null;
  }

  /** Works until nothing is left or it is to stop. Several threads may run it at once. */
  void run() {
    for (Optional<BitSet[]> cell = take(); cell.isPresent(); cell = take()) {
      try {
        step(cell.get());
        done(null);
      } catch (RuntimeException e) {
        done(e);
      }
    }
    if (fault() != null) {
      throw fault();
    }
  }

  private synchronized RuntimeException fault() {
    return fault;
  }

  private synchronized Optional<BitSet[]> take() {
    while (open.isEmpty() && busy > 0 && fault == null && !isEnding()) {
      try {
        wait(50);
      } catch (InterruptedException e) {
        stop.ask();
        Thread.currentThread().interrupt();
      }
    }
    if (open.isEmpty() || fault != null || isEnding()) {
      return Optional.empty();
    }
    busy++;
    return Optional.of(open.pop());
  }

  private boolean isEnding() {
    return stop.isDue() || region.isHalted();
  }

  private synchronized void done(RuntimeException e) {
    busy--;
    fault = fault == null ? e : fault;
    notifyAll();
  }

  private void step(BitSet[] whole) {
    Optional<BitSet[]> cut = region.cut(whole);
    BigInteger size = Space.size(whole);
    if (cut.isEmpty()) {
      count(BigInteger.ZERO, size, List.of());
      return;
    }
    BitSet[] cell = cut.get();
    count(BigInteger.ZERO, size.subtract(Space.size(cell)), List.of());
    Box box = region.around(measure.point(cell), cell);
    List<BitSet[]> left = new ArrayList<>(Region.without(cell, box));
    BigInteger inside = Space.size(Region.inside(cell, box));
    count(box.works() ? inside : BigInteger.ZERO, inside, left);
  }

  private synchronized void count(BigInteger working, BigInteger seen, List<BitSet[]> left) {
    works = works.add(working);
    considered = considered.add(seen);
    left.forEach(open::push);
    notifyAll();
  }
}
