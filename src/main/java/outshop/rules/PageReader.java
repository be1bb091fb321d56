package outshop.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.findings.Consequence;
import outshop.findings.Outcome;

/**
 * Reads the head of a rule's page: the lines {@code key: value} between two lines {@code ---}.
 * Keys: title, bound (several), situation (several), protects-people, basis, source, headline,
 * fine, why, do (several), reads, measure.
 */
public final class PageReader {
  private PageReader() {}

  /**
   * Reads one head.
   *
   * @param name family and name of the rule
   * @param lines the page, or only its head
   */
  public static RuleText read(String name, List<String> lines) {
    Map<String, List<String>> values = head(name, lines);
    List<Bound> bounds = new ArrayList<>();
    for (String text : values.getOrDefault("bound", List.of())) {
      bounds.add(bound(name, text));
    }
    Map<String, Situation> situations = new LinkedHashMap<>();
    for (String text : values.getOrDefault("situation", List.of())) {
      Situation situation = situation(name, text);
      situations.put(situation.name(), situation);
    }
    if (bounds.isEmpty() && situations.isEmpty()) {
      throw new RuleBookException(name, "its page has neither a bound nor a situation");
    }
    return new RuleText(
        name,
        one(name, values, "title"),
        List.copyOf(bounds),
        java.util.Collections.unmodifiableMap(situations),
        one(name, values, "protects-people").equals("yes"),
        one(name, values, "basis"),
        one(name, values, "source"),
        bounds.isEmpty() ? "" : one(name, values, "headline"),
        one(name, values, "fine"),
        one(name, values, "why"),
        values.getOrDefault("do", List.of()),
        reads(values));
  }

  private static Map<String, List<String>> head(String name, List<String> lines) {
    Map<String, List<String>> values = new LinkedHashMap<>();
    if (lines.isEmpty() || !lines.get(0).equals("---")) {
      throw new RuleBookException(name, "its page does not begin with a head");
    }
    for (String line : lines.subList(1, lines.size())) {
      if (line.equals("---")) {
        return values;
      }
      int colon = line.indexOf(": ");
      if (colon < 0) {
        throw new RuleBookException(name, "not \"key: value\": " + line);
      }
      values
          .computeIfAbsent(line.substring(0, colon), k -> new ArrayList<>())
          .add(line.substring(colon + 2).trim());
    }
    throw new RuleBookException(name, "the head of its page does not end");
  }

  private static String one(String name, Map<String, List<String>> values, String key) {
    List<String> found = values.getOrDefault(key, List.of());
    if (found.size() != 1) {
      throw new RuleBookException(name, "its page needs one line \"" + key + ": ...\"");
    }
    return found.get(0);
  }

  /** {@code pack, receiver}; nothing where the line is left out. */
  private static List<String> reads(Map<String, List<String>> values) {
    List<String> words = new ArrayList<>();
    for (String line : values.getOrDefault("reads", List.of())) {
      words.addAll(List.of(line.split("\\s*,\\s*")));
    }
    return List.copyOf(words);
  }

  /** {@code violation over 100 % destroys}, and {@code | sentence} where it has one of its own. */
  private static Bound bound(String name, String text) {
    String[] cells = text.split("\\s*\\|\\s*", 2);
    String[] words = cells[0].split("\\s+");
    if (words.length != 5 || !words[3].equals("%")) {
      throw new RuleBookException(name, "no bound: " + text);
    }
    return new Bound(
        Outcome.of(words[0]),
        Consequence.of(words[4]),
        outshop.units.QuantityReader.scaled(words[2], 0.01),
        words[1].equals("over"),
        cells.length == 1 ? "" : cells[1]);
  }

  /** {@code never | violation | destroys | sentence}. */
  private static Situation situation(String name, String text) {
    String[] cells = text.split("\\s*\\|\\s*", 4);
    if (cells.length != 4) {
      throw new RuleBookException(name, "no situation: " + text);
    }
    return new Situation(cells[0], Outcome.of(cells[1]), Consequence.of(cells[2]), cells[3]);
  }
}
