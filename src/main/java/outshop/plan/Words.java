package outshop.plan;

import java.util.Collection;
import java.util.List;

/** Puts lists of words into sentences. */
final class Words {
  private static final int MOST = 8;

  private Words() {}

  /** {@code a, b or c}; of a long list only its beginning and how many more there are. */
  static String some(Collection<String> words) {
    List<String> list = List.copyOf(words);
    return list.size() <= MOST
        ? either(list)
        : "%s (and %d more)".formatted(either(list.subList(0, MOST)), list.size() - MOST);
  }

  /** {@code a, b or c}. */
  static String either(Collection<String> words) {
    List<String> list = List.copyOf(words);
    int last = list.size() - 1;
    if (last < 1) {
      return String.join("", list);
    }
    return String.join(", ", list.subList(0, last)) + " or " + list.get(last);
  }
}
