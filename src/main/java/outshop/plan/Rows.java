package outshop.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The lists of a plan whose rows are small sections, and what each row must hold. */
final class Rows {
  private static final Map<String, List<String>> NEEDED =
      Map.of(
          "accepted", List.of("rule", "where", "reason"),
          "measured.joined", List.of("one", "other"),
          "wiring.wires", List.of("from", "to"));

  private Rows() {}

  /**
   * The key that a full path belongs to, also within a numbered row, such as {@code
   * wiring.wires.3.from}.
   */
  static Optional<Key> key(String path) {
    for (String list : NEEDED.keySet()) {
      if (path.startsWith(list + ".")) {
        String row = path.substring(list.length() + 1);
        int point = row.indexOf('.');
        return point < 0 ? Optional.empty() : Keys.find(list + row.substring(point));
      }
    }
    return Keys.find(path);
  }

  /** As {@link #key}. Errors: {@link IllegalArgumentException} if there is none. */
  static Key requireKey(String path) {
    return key(path).orElseThrow(() -> new IllegalArgumentException("no key " + path));
  }

  /**
   * The keys that every row must hold. Errors: {@link IllegalArgumentException} if that was never
   * decided for the list, which is a fault of the program.
   */
  static List<String> needed(Key rows) {
    List<String> needed = NEEDED.get(rows.path());
    if (needed == null) {
      throw new IllegalArgumentException("nobody decided what a row of " + rows.path() + " needs");
    }
    return needed;
  }
}
