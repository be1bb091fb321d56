package outshop.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The terminals that links join, numbered, so that a search need not compare names. */
final class Terminals {
  static final int NONE = -1;

  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> names = new ArrayList<>();

  /** The two terminals of each link, by the links' order. */
  final int[] from;

  final int[] to;

  Terminals(List<Link> links) {
    from = new int[links.size()];
    to = new int[links.size()];
    for (int i = 0; i < from.length; i++) {
      from[i] = enter(links.get(i).from());
      to[i] = enter(links.get(i).to());
    }
  }

  private int enter(String name) {
    Integer known = numbers.putIfAbsent(name, names.size());
    if (known != null) {
      return known;
    }
    names.add(name);
    return names.size() - 1;
  }

  int count() {
    return names.size();
  }

  String name(int number) {
    return names.get(number);
  }

  /** The number of a terminal; NONE if no link ends there. */
  int number(String name) {
    return numbers.getOrDefault(name, NONE);
  }
}
