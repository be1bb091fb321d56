package outshop.plan;

import java.util.List;
import java.util.Map;

/** The lists of a plan whose rows are small sections, and what each row must hold. */
final class Rows {
  private static final Map<String, List<String>> NEEDED =
      Map.of(
          "accepted", List.of("rule", "where", "reason"),
          "measured.joined", List.of("one", "other"),
          "wiring.wires", List.of("from", "to"));

  private Rows() {}

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
