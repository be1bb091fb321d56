package outshop.figures.fit;

import java.util.List;

/**
 * Looks for an arrangement of boxes in a room, and, unless stopped, finds one wherever there is
 * one.
 *
 * <p>Two boxes do not overlap exactly when, on some axis, one ends before the other begins. So the
 * search decides for every pair one of six such orders, box by box, and keeps for every box the
 * earliest and the latest place that the orders leave it; an order that leaves some box no place is
 * dropped. When every pair is decided, the earliest places are an arrangement. Placing boxes one
 * after the other into corners would be simpler, but misses arrangements in which boxes hold each
 * other up in a ring (E. den Boef and others, Erratum to "The three-dimensional bin packing
 * problem", Operations Research 53 (2005), pp. 735-736, from memory).
 *
 * <p>Mirror images are looked at once: the first box keeps to the near half of its play on every
 * axis. Equal boxes are not swapped: among those that lie the same way, an earlier one begins no
 * farther along. Both may be asked at once, as turning the room round on one axis leaves the order
 * of the others.
 */
final class PackingSearch {
  /** How a search ended. */
  enum End {
    FOUND,
    EXHAUSTED,
    STOPPED
  }

  private static final int AXES = 3;

  private final List<Box> boxes;
  private final int count;
  private final long most;
  private final Orders[] orders = new Orders[AXES];

  /** By box, which of its ways it lies. */
  private final int[] way;

  private long taken;

  PackingSearch(Size room, List<Box> boxes, long most) {
    this.boxes = boxes;
    this.count = boxes.size();
    this.most = most;
    for (int axis = 0; axis < AXES; axis++) {
      orders[axis] = new Orders(room.side(axis), count);
    }
    way = new int[count];
  }

  End run() {
    return enter(0);
  }

  long taken() {
    return taken;
  }

  /** Where a box lies in the arrangement that was found. */
  Placed placed(int box) {
    return new Placed(
        boxes.get(box).name(),
        boxes.get(box).ways().get(way[box]),
        orders[0].place(box),
        orders[1].place(box),
        orders[2].place(box));
  }

  /** Brings in the next box, each way it may lie. */
  private End enter(int box) {
    if (box == count) {
      return End.FOUND;
    }
    List<Size> ways = boxes.get(box).ways();
    boolean twin = box > 0 && ways.equals(boxes.get(box - 1).ways());
    for (int w = twin ? way[box - 1] : 0; w < ways.size(); w++) {
      way[box] = w;
      long[][] before = copy();
      End end = End.EXHAUSTED;
      if (lay(box, ways.get(w), twin && w == way[box - 1])) {
        end = decide(box, (1 << box) - 1);
      }
      if (end != End.EXHAUSTED) {
        return end;
      }
      put(before);
    }
    return End.EXHAUSTED;
  }

  private boolean lay(int box, Size lying, boolean afterTwin) {
    for (int axis = 0; axis < AXES; axis++) {
      orders[axis].lay(box, lying.side(axis), box == 0);
    }
    return !afterTwin || orders[0].begin(box - 1, box, 0, box + 1);
  }

  /**
   * Decides the pairs of a box with the earlier ones that are still open, the most constrained
   * first.
   *
   * @param open the earlier boxes, as bits
   */
  private End decide(int box, int open) {
    if (++taken > most) {
      return End.STOPPED;
    }
    int left = 0;
    int chosen = -1;
    int fewest = Integer.MAX_VALUE;
    for (int other = 0; other < box; other++) {
      if ((open & 1 << other) == 0 || apart(other, box)) {
        continue;
      }
      left |= 1 << other;
      int choices = choices(other, box);
      if (choices < fewest) {
        fewest = choices;
        chosen = other;
      }
    }
    return chosen < 0 ? enter(box + 1) : branch(box, chosen, left & ~(1 << chosen));
  }

  /** Tries the six orders of two boxes: the later one beyond the earlier, then before it. */
  private End branch(int box, int other, int open) {
    for (int choice = 0; choice < 2 * AXES; choice++) {
      Orders axis = orders[choice % AXES];
      int first = choice < AXES ? other : box;
      int second = choice < AXES ? box : other;
      if (!axis.mayEnd(first, second)) {
        continue;
      }
      long[] before = axis.copy();
      if (axis.end(first, second, box + 1)) {
        End end = decide(box, open);
        if (end != End.EXHAUSTED) {
          return end;
        }
      }
      axis.put(before);
    }
    return End.EXHAUSTED;
  }

  private boolean apart(int one, int other) {
    for (Orders axis : orders) {
      if (axis.ends(one, other) || axis.ends(other, one)) {
        return true;
      }
    }
    return false;
  }

  private int choices(int one, int other) {
    int choices = 0;
    for (Orders axis : orders) {
      choices += axis.mayEnd(one, other) ? 1 : 0;
      choices += axis.mayEnd(other, one) ? 1 : 0;
    }
    return choices;
  }

  private long[][] copy() {
    long[][] copy = new long[AXES][];
    for (int axis = 0; axis < AXES; axis++) {
      copy[axis] = orders[axis].copy();
    }
    return copy;
  }

  private void put(long[][] copy) {
    for (int axis = 0; axis < AXES; axis++) {
      orders[axis].put(copy[axis]);
    }
  }
}
