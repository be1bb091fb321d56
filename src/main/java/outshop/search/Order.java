package outshop.search;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** By what combinations that work are ranked; among equals the one with fewer warnings. */
public enum Order {
  /** The fewest warnings, then the cheapest. */
  WARNINGS,
  /** The cheapest; those with a part of unknown price behind all others. */
  COST,
  /**
   * The longest run on a charge that is possible by what is known; those of which it is unknown
   * behind all others.
   */
  RUN_TIME,
  /** The smallest room that the parts take together; those of unknown size behind all others. */
  SIZE;

  /** The word for it on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public static Optional<Order> of(String word) {
    for (Order order : values()) {
      if (order.word().equals(word)) {
        return Optional.of(order);
      }
    }
    return Optional.empty();
  }

  public static List<String> words() {
    return List.of(values()).stream().map(Order::word).toList();
  }
}
