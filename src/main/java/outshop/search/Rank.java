package outshop.search;

import java.util.Arrays;

/**
 * Where a combination stands in an order, or the best that one of a cell can reach.
 *
 * @param marks compared one after the other, less is better
 * @param choices the last resort: the choices' numbers, which follow their ids
 */
record Rank(double[] marks, int[] choices) implements Comparable<Rank> {
  @Override
  public int compareTo(Rank other) {
    int byMarks = Arrays.compare(marks, other.marks);
    return byMarks != 0 ? byMarks : Arrays.compare(choices, other.choices);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rank rank && compareTo(rank) == 0;
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(choices);
  }
}
