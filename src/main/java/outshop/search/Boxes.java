package outshop.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * The boxes found so far, with an index: by place and choice, which boxes hold it. Threads share
 * one.
 */
final class Boxes {
  private final BitSet[][] holding;
  private final List<Box> boxes = new ArrayList<>();

  Boxes(BitSet[] all) {
    holding = new BitSet[all.length][];
    for (int s = 0; s < all.length; s++) {
      holding[s] = new BitSet[all[s].length()];
      for (int i = 0; i < holding[s].length; i++) {
        holding[s][i] = new BitSet();
      }
    }
  }

  synchronized int size() {
    return boxes.size();
  }

  synchronized List<Box> all() {
    return List.copyOf(boxes);
  }

  /** Leaves out the boxes that rest on a rule. */
  synchronized void forget(String rule) {
    List<Box> kept = boxes.stream().filter(b -> !b.reason().equals(rule)).toList();
    boxes.clear();
    for (BitSet[] slot : holding) {
      for (BitSet numbers : slot) {
        numbers.clear();
      }
    }
    kept.forEach(this::add);
  }

  synchronized void add(Box box) {
    int number = boxes.size();
    boxes.add(box);
    for (int s = 0; s < holding.length; s++) {
      for (int i = 0; i < holding[s].length; i++) {
        if (box.sets()[s] == null || box.sets()[s].get(i)) {
          holding[s][i].set(number);
        }
      }
    }
  }

  /** Of the boxes that hold a point, the one that covers most of the cell around it. */
  synchronized Optional<Box> covering(int[] point, BitSet[] cell) {
    Box best = null;
    double most = 0;
    BitSet found = holding(point);
    int first = found.nextSetBit(0);
    if (first < 0 || found.nextSetBit(first + 1) < 0) {
      return first < 0 ? Optional.empty() : Optional.of(boxes.get(first));
    }
    for (int n = found.nextSetBit(0); n >= 0 && most < 1; n = found.nextSetBit(n + 1)) {
      double share = boxes.get(n).share(cell);
      if (share > most) {
        best = boxes.get(n);
        most = share;
      }
    }
    return Optional.ofNullable(best);
  }

  private BitSet holding(int[] point) {
    BitSet found = new BitSet();
    found.set(0, boxes.size());
    for (int s = 0; s < point.length && !found.isEmpty(); s++) {
      found.and(holding[s][point[s]]);
    }
    return found;
  }
}
