package outshop.coverage;

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
import outshop.mutation.MutationRecord;
import outshop.mutation.Score;
import outshop.outside.OutsideProof;
import outshop.outside.Proof;
import outshop.rulecases.Answered;
import outshop.rulecases.Example;
import outshop.rules.Bound;
import outshop.rules.RuleText;
import outshop.rules.Situation;
import outshop.units.AmountText;

/**
 * What the page and the examples of one rule show, and what stands behind it.
 *
 * @param parts the headings of the page
 * @param shown its examples with their answers
 * @param proof what stands behind it outside the program
 * @param mutants the record of its mutants
 */
public record Coverage(
    RuleText rule,
    List<String> parts,
    List<Answered> shown,
    Proof proof,
    MutationRecord.Entry mutants) {
  /** The parts that every page has. */
  private static final List<String> PARTS =
      List.of(
          "What it says",
          "Why",
          "The working",
          "How to put it right",
          "How to measure what it needs",
          "When it does not apply");

  private static final String HEAD =
      """
      # What stands behind each rule

      Made by the tests from the pages and examples beside the rules, the checks against the world outside and the record of the last
      mutation run; do not edit. A rule that lacks a part of its page, an example that fails, one that passes, one with a value missing (where
      it compares), either side of a bound, one of its situations or any proof outside, or that has a mutant which nothing notices, fails the
      tests.

      - *page*: whether every part is there. The next columns count the examples by their answer.
      - *bounds*: for each bound, what the examples nearest to it on either side compare (demand / limit), first within it, then past it.
      - *situations*: how many of those that the page describes are shown.
      - *outside proof*: first how far the source on the rule's page was read, by the weakest of what it says. *read*: a published text that
        was at hand; *second-hand*: a page that quotes it; *from memory*: nothing was at hand; *common practice, no source*: what the trade
        does, wholly or in part, and nobody outside can be asked. Where the rule needs no publication: *the part's own data* (its limit stands
        in the data sheet), *follows from the circuit*, *geometry*. Then how many of the checks of [verification.md](verification.md) bear on
        it: those *of the rule itself* run it or compare its bound with the source; the others check a figure that it compares or names, or
        what that figure is made of. *solved circuits*: what it compares comes from solving the whole circuit, which is held against
        textbooks, hand calculations and ngspice, with the wires, packs and motors that stand in it. Where nothing follows the source, no
        check outside bears on the rule: it rests on what is named, on a plain comparison and on its examples.
        Which check bears on which rule is kept by hand in `src/test/resources/outside-proof.txt`.
      - *mutants noticed*: of the deliberate faults that were put into the rule one at a time, how many its own examples notice. *equivalent*
        ones change nothing that an example could see and are not among them. [rule-mutation.md](rule-mutation.md) has the particulars.

      """;

  private static final String COLUMNS =
      """
      | rule | page | violation | warning | cannot tell | advice | fine | silent | bounds | situations | outside proof | mutants noticed |
      | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
      """;

  private static final List<String> FAILING = List.of("violation", "warning", "advice");
  private static final List<String> PASSING = List.of("fine", "silent");

  /** What a rule is held against besides its page and its examples. */
  private record Held(OutsideProof proofs, MutationRecord record) {
    static Held load() {
      return new Held(OutsideProof.load(), MutationRecord.load());
    }
  }

  static Stream<Coverage> of(Collection<RuleText> rules) {
    Held held = Held.load();
    return rules.stream().map(rule -> of(rule, held));
  }

  private static Coverage of(RuleText rule, Held held) {
    try {
      List<String> parts =
          Files.readAllLines(Example.RULES.resolve(rule.name() + ".md")).stream()
              .filter(l -> l.startsWith("# "))
              .map(l -> l.substring(2).strip())
              .toList();
      return new Coverage(
          rule, parts, Answered.of(rule.name()), held.proofs().of(rule), held.record().of(rule));
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
    proof.gap().ifPresent(gaps::add);
    gaps.addAll(mutants.gaps());
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
    cells.add(proof.words());
    cells.add(mutants.score().map(Score::brief).orElse("no record"));
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
  public static String text(Collection<RuleText> rules) {
    List<Coverage> all = of(rules).toList();
    StringBuilder text = new StringBuilder(HEAD);
    text.append(counts(all));
    String family = "";
    for (Coverage one : all) {
      if (!one.rule.family().equals(family)) {
        family = one.rule.family();
        text.append("\n## ").append(family).append("\n\n").append(COLUMNS);
      }
      text.append(one.row());
    }
    return text.toString();
  }

  /** How many rules have which proof, and how many mutants were noticed. */
  private static String counts(List<Coverage> all) {
    List<Score> scores = all.stream().flatMap(c -> c.mutants.score().stream()).toList();
    return """
           %d examples of %d rules. Checks against the world outside bear on %d rules, solved circuits on %d, neither on %d. Of %d mutants \
           the examples notice %d; %d are equivalent.
           """
        .formatted(
            all.stream().mapToInt(c -> c.shown.size()).sum(),
            all.size(),
            all.stream().filter(c -> !c.proof.checks().isEmpty()).count(),
            all.stream().filter(c -> c.proof.solved()).count(),
            all.stream().filter(c -> c.proof.checks().isEmpty() && !c.proof.solved()).count(),
            scores.stream().mapToInt(Score::mutants).sum(),
            scores.stream().mapToInt(Score::noticed).sum(),
            scores.stream().mapToInt(Score::equivalent).sum());
  }
}
