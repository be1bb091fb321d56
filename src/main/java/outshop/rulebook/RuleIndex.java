package outshop.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import outshop.findings.Consequence;
import outshop.rules.Bound;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;
import outshop.rules.Situation;
import outshop.units.AmountText;

/** Writes the index of all rules, {@code docs/rules.md}, from their pages. */
public final class RuleIndex {
  private RuleIndex() {}

  public static String text(RuleBook book) {
    StringBuilder text = new StringBuilder();
    text.append("# The rules\n\n");
    text.append(
        "Made from the pages beside the rules; do not edit. Each rule's own page lies in `rules/FAMILY/NAME.md` and is shown by\n");
    text.append(
        "`outshop explain FAMILY/NAME`. Bounds say from where on an outcome is given: a value exactly at a bound passes. A rule marked ‡\n");
    text.append(
        "protects people: a club may only make it stricter, and an owner's acceptance does not take it away.\n\n");
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
    families.forEach((family, rules) -> family(family, rules, text));
    return text.toString();
  }

  private static void family(String family, List<RuleText> rules, StringBuilder text) {
    text.append("\n## ").append(family).append("\n\n");
    text.append("| rule | what it asks | outcomes | consequence | basis | source |\n");
    text.append("| --- | --- | --- | --- | --- | --- |\n");
    for (RuleText rule : rules) {
      text.append("| [")
          .append(rule.name())
          .append("](../rules/")
          .append(rule.name())
          .append(".md)");
      text.append(rule.protectsPeople() ? " ‡" : "")
          .append(" | ")
          .append(rule.title())
          .append(" | ");
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
    TreeSet<Consequence> all = new TreeSet<>();
    rule.bounds().forEach(b -> all.add(b.consequence()));
    rule.situations().values().forEach(s -> all.add(s.consequence()));
    return String.join(", ", all.stream().map(Consequence::word).toList());
  }
}
