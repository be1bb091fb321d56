package outshop.plan;

import java.util.Collection;
import java.util.List;

/** Puts lists of words into sentences. */
final class Words {
  private Words() {}

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
