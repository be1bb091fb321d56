package outshop.rulecases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.rules.Bound;
import outshop.rules.RuleText;
import outshop.rules.Situation;
import outshop.units.AmountText;

/**
 * What the page and the examples of one rule show.
 *
 * @param parts the headings of the page
 * @param shown its examples with their answers
 */
record Coverage(RuleText rule, List<String> parts, List<Answered> shown) {
  /** The parts that every page has. */
  private static final List<String> PARTS =
      List.of(
          "What it says",
          "Why",
          "The working",
          "How to put it right",
          "How to measure what it needs",
          "When it does not apply");

  private static final List<String> FAILING = List.of("violation", "warning", "advice");
  private static final List<String> PASSING = List.of("fine", "silent");

  static Coverage of(RuleText rule) {
    try {
      List<String> parts =
          Files.readAllLines(Example.RULES.resolve(rule.name() + ".md")).stream()
              .filter(l -> l.startsWith("# "))
              .map(l -> l.substring(2).strip())
              .toList();
      return new Coverage(rule, parts, Answered.of(rule.name()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is to be shown and is not, in words. */
  List<String> gaps() {
    List<String> gaps = new ArrayList<>();
    PARTS.stream().filter(p -> !parts.contains(p)).forEach(p -> gaps.add("page without " + p));
    if (FAILING.stream().mapToLong(this::count).sum() == 0) {
      gaps.add("no example that fails");
    }
    if (PASSING.stream().mapToLong(this::count).sum() == 0) {
      gaps.add("no example that passes");
    }
    if (!rule.bounds().isEmpty() && count(Outcome.CANNOT_TELL.words()) == 0) {
      gaps.add("no example with a value missing, though it compares");
    }
    for (Bound bound : rule.bounds()) {
      if (nearest(bound, true).isEmpty() || nearest(bound, false).isEmpty()) {
        gaps.add("only one side shown of " + name(bound));
      }
    }
    for (Situation situation : rule.situations().values()) {
      if (!isShown(situation)) {
        gaps.add("no example of its situation " + situation.name());
      }
    }
    return gaps;
  }

  /** A line of the table. */
  private String row() {
    List<String> cells = new ArrayList<>();
    cells.add("[" + rule.name() + "](../rules/" + rule.name() + ".cases.yaml)");
    List<String> missing = PARTS.stream().filter(p -> !parts.contains(p)).toList();
    cells.add(missing.isEmpty() ? "all" : "lacks " + String.join(", ", missing));
    for (Outcome outcome : Outcome.values()) {
      cells.add(number(count(outcome.words())));
    }
    cells.add(number(count("silent")));
    cells.add(rule.bounds().stream().map(this::sides).collect(Collectors.joining("; ")));
    long situations = rule.situations().values().stream().filter(this::isShown).count();
    cells.add(rule.situations().isEmpty() ? "" : situations + " of " + rule.situations().size());
    return "| " + String.join(" | ", cells) + " |\n";
  }

  private static String number(long count) {
    return count == 0 ? "" : Long.toString(count);
  }

  /** How many examples are answered so. */
  private long count(String answer) {
    return shown.stream().filter(a -> a.example().expect().equals(answer)).count();
  }

  /** The nearest demand / limit on the one side of a bound and on the other, in percent. */
  private String sides(Bound bound) {
    return name(bound) + ": " + side(bound, false) + " and " + side(bound, true);
  }

  private static String name(Bound bound) {
    return bound.outcome().words()
        + (bound.over() ? " over " : " under ")
        + AmountText.percent(bound.factor());
  }

  private String side(Bound bound, boolean past) {
    return nearest(bound, past).map(Coverage::percent).orElse("none");
  }

  /**
   * The demand over the limit, of the example nearest to the bound on one side of it. Past it means
   * that this bound decides: no worse one is passed as well.
   */
  private Optional<Double> nearest(Bound bound, boolean past) {
    return compared()
        .filter(f -> past ? decides(bound, f) : !passed(bound, f))
        .map(f -> f.demand().get().value() / f.limit().get().value())
        .filter(Double::isFinite)
        .min((a, b) -> Double.compare(Math.abs(a - bound.factor()), Math.abs(b - bound.factor())));
  }

  private boolean decides(Bound bound, Finding finding) {
    return rule.bounds().stream()
        .filter(b -> passed(b, finding))
        .findFirst()
        .equals(Optional.of(bound));
  }

  private static boolean passed(Bound bound, Finding finding) {
    return bound.passed(finding.demand().get().value(), finding.limit().get().value());
  }

  private Stream<Finding> compared() {
    return shown.stream()
        .flatMap(a -> a.answers().stream())
        .filter(f -> f.demand().isPresent() && f.limit().isPresent());
  }

  private static String percent(double share) {
    BigDecimal rounded =
        BigDecimal.valueOf(share * 100).round(new MathContext(7, RoundingMode.HALF_EVEN));
    return rounded.stripTrailingZeros().toPlainString() + " %";
  }

  /** What a headline that objects ends with. */
  private static final String FIRST_CURE = "(; .*)?";

  /** Whether some answer is this situation's sentence, with its gaps filled. */
  private boolean isShown(Situation situation) {
    String[] pieces = situation.headline().split("\\{[^}]*\\}", -1);
    Pattern sentence =
        Pattern.compile(
            Stream.of(pieces).map(Pattern::quote).collect(Collectors.joining(".*")) + FIRST_CURE,
            Pattern.DOTALL);
    return shown.stream()
        .flatMap(a -> a.answers().stream())
        .anyMatch(
            f ->
                f.outcome() == situation.outcome()
                    && f.consequence() == situation.consequence()
                    && sentence.matcher(f.headline()).matches());
  }

  /** The table of all rules, as a page. */
  static String text(Collection<RuleText> rules) {
    List<Coverage> all = rules.stream().map(Coverage::of).toList();
    long examples = all.stream().mapToLong(c -> c.shown.size()).sum();
    StringBuilder text = new StringBuilder();
    text.append("# What the examples show\n\n");
    text.append(
        "Made by the tests from the pages and examples beside the rules; do not edit. A rule that lacks a part of its page, an example\n");
    text.append(
        "that fails, one that passes, one with a value missing (where it compares), either side of a bound, or one of its situations fails\n");
    text.append("the tests.\n\n");
    text.append(
        "*page*: whether every part is there. The next columns count the examples by their answer. *bounds*: for each bound, what the\n");
    text.append(
        "examples nearest to it on either side compare (demand / limit), first within it, then past it. *situations*: how many of those\n");
    text.append("that the page describes are shown.\n\n");
    text.append(examples).append(" examples of ").append(all.size()).append(" rules.\n");
    String family = "";
    for (Coverage one : all) {
      if (!one.rule.family().equals(family)) {
        family = one.rule.family();
        text.append("\n## ").append(family).append("\n\n");
        text.append(
            "| rule | page | violation | warning | cannot tell | advice | fine | silent | bounds | situations |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
      }
      text.append(one.row());
    }
    return text.toString();
  }
}
