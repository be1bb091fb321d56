package outshop.mend;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.findings.Finding;

/**
 * A set of changes and what the check said of it.
 *
 * @param members their numbers in the list of all changes, rising
 * @param standing what must still go, by key
 * @param matters warnings that count, and what the owner gives up
 * @param untold how much cannot be told
 * @param past how far what stands is past its bounds, together
 */
record Trial(
    List<Integer> members,
    Map<String, Finding> standing,
    int matters,
    int untold,
    Optional<Double> cost,
    double past) {

  /** Fewest changes, then the least that remains, then the cheapest; the rest makes it total. */
  static final Comparator<Trial> BEST =
      Comparator.comparingInt((Trial t) -> t.members().size())
          .thenComparingInt(t -> t.standing().size())
          .thenComparingInt(Trial::matters)
          .thenComparingInt(Trial::untold)
          .thenComparingDouble(t -> t.cost().orElse(Double.POSITIVE_INFINITY))
          .thenComparing(Trial::members, Trial::inOrder);

  /** Nearest to a mend first. */
  static final Comparator<Trial> PROMISING =
      Comparator.comparingInt((Trial t) -> t.standing().size())
          .thenComparingInt(Trial::matters)
          .thenComparingDouble(t -> Math.rint(t.past() * 1e6) / 1e6)
          .thenComparing(BEST);

  private static int inOrder(List<Integer> one, List<Integer> other) {
    for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
      int order = Integer.compare(one.get(i), other.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(one.size(), other.size());
  }
}
