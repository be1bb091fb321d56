package outshop.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outshop.catalogue.Kind;

/**
 * Puts ids into a plan's text where it leaves places open, and leaves all else as the user wrote
 * it.
 */
public final class PlanFilling {
  private static final Pattern ANY = Pattern.compile("^(\"any\"|'any'|any)(?![A-Za-z0-9_-])");
  private static final Pattern PLAIN = Pattern.compile("[a-z][a-z0-9._-]*");

  private final List<String> lines;

  private PlanFilling(String text) {
    this.lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
  }

  /**
   * The text with the ids in it; empty where a place cannot be found in it.
   *
   * @param ids by the place the plan leaves open
   * @param added ids of parts that the plan does not name, by the name they get
   */
  public static Optional<String> filled(
      String text, Map<OpenPart, String> ids, Map<String, String> added) {
    PlanFilling filling = new PlanFilling(text);
    List<OpenPart> backwards =
        ids.keySet().stream()
            .sorted(
                Comparator.comparingInt((OpenPart o) -> o.place().line())
                    .thenComparingInt(o -> o.place().column())
                    .reversed())
            .toList();
    for (OpenPart open : backwards) {
      if (!filling.put(open, ids.get(open))) {
        return Optional.empty();
      }
    }
    filling.add(added);
    return Optional.of(String.join("\n", filling.lines));
  }

  private boolean put(OpenPart open, String id) {
    int number = open.place().line() - 1;
    int column = open.place().column() - 1;
    if (number < 0 || number >= lines.size() || column > lines.get(number).length()) {
      return false;
    }
    String line = lines.get(number);
    Matcher any = ANY.matcher(line.substring(column));
    if (!any.find()) {
      return false;
    }
    lines.set(number, line.substring(0, column) + written(id) + line.substring(column + any.end()));
    dropKind(open.kind(), number);
    return true;
  }

  /** The kind that stood beside {@code part: any}: the id says it now. */
  private void dropKind(Kind kind, int number) {
    String said = "kind:\\s*" + kind.word();
    String line = lines.get(number);
    String without =
        line.replaceFirst(said + "\\s*,\\s*", "")
            .replaceFirst("\\s*,\\s*" + said + "(?=\\s*[,}])", "");
    lines.set(number, without);
    for (int near : new int[] {number + 1, number - 1}) {
      boolean own = near >= 0 && near < lines.size() && lines.get(near).strip().matches(said);
      if (without.equals(line) && own && indent(lines.get(near)) == indent(line)) {
        lines.remove(near);
        return;
      }
    }
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  private void add(Map<String, String> added) {
    if (added.isEmpty()) {
      return;
    }
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (line.matches("parts:\\s*(#.*)?")) {
        boolean below = i + 1 < lines.size() && indent(lines.get(i + 1)) > 0;
        lines.addAll(i + 1, rows(below ? indent(lines.get(i + 1)) : 2, added));
        return;
      }
      if (line.startsWith("parts: {")) {
        String inside = String.join(", ", rows(0, added));
        boolean empty = line.matches("parts: \\{\\s*}.*");
        lines.set(
            i,
            line.replaceFirst("\\{", Matcher.quoteReplacement("{" + inside + (empty ? "" : ", "))));
        return;
      }
    }
    while (!lines.isEmpty() && lines.get(lines.size() - 1).isBlank()) {
      lines.remove(lines.size() - 1);
    }
    lines.add("parts:");
    lines.addAll(rows(2, added));
    lines.add("");
  }

  private static List<String> rows(int indent, Map<String, String> added) {
    List<String> rows = new ArrayList<>();
    added.forEach((name, id) -> rows.add(" ".repeat(indent) + name + ": " + written(id)));
    return rows;
  }

  /** An id as it can stand in a plan without being taken for something else. */
  private static String written(String id) {
    return PLAIN.matcher(id).matches()
        ? id
        : "\"" + id.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
