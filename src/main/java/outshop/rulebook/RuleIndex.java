package outshop.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.findings.Consequence;
import outshop.rules.Bound;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;
import outshop.rules.Situation;
import outshop.units.AmountText;

/**
 * Writes the index of all rules, {@code docs/rules.md}, from their pages: by family, by consequence
 * and by what they read.
 */
public final class RuleIndex {
  private RuleIndex() {}

  /**
   * The index.
   *
   * @param reads by rule, the kinds of part and the other things of a plan that it reads
   */
  public static String text(RuleBook book, Map<String, List<String>> reads) {
    StringBuilder text = new StringBuilder();
    text.append("# The rules\n\n");
    text.append(
        "Made from the pages beside the rules; do not edit. Each rule's own page lies in `rules/FAMILY/NAME.md` and is shown by\n");
    text.append(
        "`outshop explain FAMILY/NAME`. Bounds say from where on an outcome is given: a value exactly at a bound passes. A rule marked ‡\n");
    text.append(
        "protects people: a club may only make it stricter, and an owner's acceptance does not take it away. What the examples of each\n");
    text.append(
        "rule show, and what else stands behind it, is in [coverage.md](coverage.md), the words are in [words.md](words.md).\n\n");
    text.append(
        "Basis: *std* published standard, *hb* handbook or physics, *part* the part's own data, *cp* common practice in the trade.\n\n");
    Map<String, List<RuleText>> families = new LinkedHashMap<>();
    for (RuleText rule : book.all()) {
      families.computeIfAbsent(rule.family(), f -> new ArrayList<>()).add(rule);
    }
    text.append(book.all().size())
        .append(" rules in ")
        .append(families.size())
        .append(" families: ");
    text.append(String.join(", ", families.keySet())).append(".\n");
    text.append(
        "\nFurther down the rules stand once more [by consequence](#by-consequence) and [by what they read](#by-what-they-read).\n");
    families.forEach((family, rules) -> family(family, rules, text));
    byConsequence(book, text);
    byReading(book, reads, text);
    return text.toString();
  }

  /** A rule stands under every consequence that one of its outcomes has. */
  private static void byConsequence(RuleBook book, StringBuilder text) {
    text.append("\n## By consequence\n\n");
    text.append(
        "What happens if nothing is done, worst first. A rule whose outcomes differ stands under each.\n");
    for (Consequence consequence : Consequence.values()) {
      List<RuleText> rules = book.all().stream().filter(r -> of(r).contains(consequence)).toList();
      text.append("\n### ")
          .append(consequence.word())
          .append(": ")
          .append(consequence.meaning())
          .append("\n\n");
      rules.forEach(
          rule ->
              text.append("- ").append(link(rule)).append(": ").append(rule.title()).append('\n'));
    }
  }

  private static void byReading(
      RuleBook book, Map<String, List<String>> reads, StringBuilder text) {
    text.append("\n## By what they read\n\n");
    text.append(
        "Recorded while the examples of each rule run: what an example changes, what an answer is about, what stands behind the compared\n");
    text.append(
        "values, what is wanted when a value is missing. *circuit*: a value that comes from solving the whole circuit.\n");
    Map<String, List<RuleText>> byWord = new LinkedHashMap<>();
    Kind.words().forEach(kind -> byWord.put(kind, new ArrayList<>()));
    for (RuleText rule : book.all()) {
      for (String word : reads.getOrDefault(rule.name(), List.of())) {
        byWord.computeIfAbsent(word, w -> new ArrayList<>()).add(rule);
      }
    }
    byWord.forEach(
        (word, rules) -> {
          text.append("\n### ").append(word).append("\n\n");
          rules.forEach(
              rule ->
                  text.append("- ")
                      .append(link(rule))
                      .append(": ")
                      .append(rule.title())
                      .append('\n'));
          if (rules.isEmpty()) {
            text.append("No rule reads it yet.\n");
          }
        });
  }

  private static String link(RuleText rule) {
    return "["
        + rule.name()
        + "](../rules/"
        + rule.name()
        + ".md)"
        + (rule.protectsPeople() ? " ‡" : "");
  }

  private static void family(String family, List<RuleText> rules, StringBuilder text) {
    text.append("\n## ").append(family).append("\n\n");
    text.append("| rule | what it asks | outcomes | consequence | basis | source |\n");
    text.append("| --- | --- | --- | --- | --- | --- |\n");
    for (RuleText rule : rules) {
      text.append("| ").append(link(rule)).append(" | ").append(rule.title()).append(" | ");
      text.append(outcomes(rule)).append(" | ").append(consequences(rule)).append(" | ");
      text.append(rule.basis()).append(" | ").append(rule.source()).append(" |\n");
    }
  }

  private static String outcomes(RuleText rule) {
    List<String> outcomes = new ArrayList<>();
    for (Bound bound : rule.bounds()) {
      outcomes.add(
          bound.outcome().words()
              + (bound.over() ? " over " : " under ")
              + AmountText.percent(bound.factor()));
    }
    for (Situation situation : rule.situations().values()) {
      outcomes.add(situation.name() + ": " + situation.outcome().words());
    }
    return String.join("; ", outcomes);
  }

  private static String consequences(RuleText rule) {
    return String.join(", ", of(rule).stream().map(Consequence::word).toList());
  }

  private static TreeSet<Consequence> of(RuleText rule) {
    TreeSet<Consequence> all = new TreeSet<>();
    rule.bounds().forEach(b -> all.add(b.consequence()));
    rule.situations().values().forEach(s -> all.add(s.consequence()));
    return all;
  }
}
