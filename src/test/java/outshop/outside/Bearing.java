package outshop.outside;

import java.util.List;
import java.util.Map;

/**
 * A line of the list: checks, and the rules whose figures they check.
 *
 * @param checks their ids; one {@code *} in each may stand for any letters
 * @param on which rules
 */
record Bearing(List<String> checks, On on) {
  private static final String READS = "reads ";
  private static final String NOTHING = "no rule: ";

  /** Which rules. */
  sealed interface On permits Rules, Readers, Nothing {}

  /** Those that are named. */
  record Rules(List<String> names) implements On {}

  /** Every rule whose answers depend on all of these, as its examples show. */
  record Readers(List<String> words) implements On {}

  /** None, for the reason given. */
  record Nothing(String reason) implements On {}

  static Bearing of(String line) {
    String[] cells = line.split(" \\| ", -1);
    if (cells.length != 2 || cells[0].isBlank() || cells[1].isBlank()) {
      throw new IllegalArgumentException("not \"checks | rules\": " + line);
    }
    String right = cells[1].strip();
    return new Bearing(
        words(cells[0]),
        right.startsWith(NOTHING)
            ? new Nothing(right.substring(NOTHING.length()))
            : right.startsWith(READS)
                ? new Readers(words(right.substring(READS.length())))
                : new Rules(words(right)));
  }

  private static List<String> words(String text) {
    return List.of(text.strip().split("[ ,]+"));
  }

  /** The rules that are meant. */
  List<String> rules(Map<String, List<String>> reads) {
    if (on instanceof Rules named) {
      return named.names();
    }
    return on instanceof Readers readers
        ? reads.entrySet().stream()
            .filter(rule -> rule.getValue().containsAll(readers.words()))
            .map(Map.Entry::getKey)
            .toList()
        : List.of();
  }

  boolean means(OutsideCheck check) {
    return checks.stream().anyMatch(pattern -> fits(pattern, check.id()));
  }

  static boolean fits(String pattern, String check) {
    int star = pattern.indexOf('*');
    return star < 0
        ? check.equals(pattern)
        : check.length() >= pattern.length() - 1
            && check.startsWith(pattern.substring(0, star))
            && check.endsWith(pattern.substring(star + 1));
  }
}
