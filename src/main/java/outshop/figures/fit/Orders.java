package outshop.figures.fit;

import java.util.Arrays;

/**
 * Along one axis, which box must begin at least how far past the beginning of which other, and the
 * earliest and latest place this leaves each. Whole micrometres.
 */
final class Orders {
  private static final long NONE = Long.MIN_VALUE;

  private final long room;
  private final int count;
  private final long[] side;

  /** The gaps by pair, then the earliest places, then the latest: one array, so one copy. */
  private final long[] held;

  private final int earliest;
  private final int latest;

  Orders(long room, int count) {
    this.room = room;
    this.count = count;
    side = new long[count];
    earliest = count * count;
    latest = earliest + count;
    held = new long[latest + count];
    Arrays.fill(held, 0, earliest, NONE);
  }

  /** Everything that {@link #put} needs to come back here. */
  long[] copy() {
    return held.clone();
  }

  void put(long[] copy) {
    System.arraycopy(copy, 0, held, 0, held.length);
  }

  /** Brings in a box that lies free, between nothing and the given share of its play. */
  void lay(int box, long length, boolean nearHalf) {
    side[box] = length;
    held[box * count + box] = 0;
    held[earliest + box] = 0;
    held[latest + box] = nearHalf ? (room - length) / 2 : room - length;
  }

  long place(int box) {
    return held[earliest + box];
  }

  /** Whether one box is certain to end before the other begins. */
  boolean ends(int first, int second) {
    return held[first * count + second] >= side[first]
        || held[latest + first] + side[first] <= held[earliest + second];
  }

  /** Whether one box may still end before the other begins. */
  boolean mayEnd(int first, int second) {
    long back = held[second * count + first];
    return (back == NONE || back + side[first] <= 0)
        && held[earliest + first] + side[first] <= held[latest + second];
  }

  /** Makes one box end before the other begins; false if that leaves some box no place. */
  boolean end(int first, int second, int among) {
    return begin(first, second, side[first], among);
  }

  /**
   * Makes one box begin at least so far past the beginning of the other; false if that leaves some
   * box no place.
   *
   * @param among how many boxes are in, counted from the first
   */
  boolean begin(int first, int second, long past, int among) {
    for (int i = 0; i < among; i++) {
      long before = held[i * count + first];
      if (before == NONE) {
        continue;
      }
      for (int j = 0; j < among; j++) {
        long after = held[second * count + j];
        if (after != NONE) {
          int pair = i * count + j;
          held[pair] = Math.max(held[pair], before + past + after);
        }
      }
    }
    return settle(first, second, among);
  }

  /** Carries the earliest places on and the latest back over a new order. */
  private boolean settle(int first, int second, int among) {
    for (int j = 0; j < among; j++) {
      long gap = held[first * count + j];
      if (gap != NONE) {
        held[earliest + j] = Math.max(held[earliest + j], held[earliest + first] + gap);
      }
    }
    for (int i = 0; i < among; i++) {
      long gap = held[i * count + second];
      if (gap != NONE) {
        held[latest + i] = Math.min(held[latest + i], held[latest + second] - gap);
      }
    }
    for (int i = 0; i < among; i++) {
      if (held[earliest + i] > held[latest + i]) {
        return false;
      }
    }
    return true;
  }
}
