package outshop.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.catalogue.Catalogue;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Problem;
import outshop.plan.PlanReader;
import outshop.ranking.Ranking;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/**
 * Runs every example beside every rule, through the whole flow from the plan's text to the
 * findings.
 */
final class RuleExamplesTest {
  private static final RuleEngine ENGINE = RuleEngine.load();
  private static final Catalogue NOTHING = new Catalogue(List.of());

  @TestFactory
  Stream<DynamicTest> everyExampleAnswersAsItSays() {
    return Example.all().stream().map(e -> DynamicTest.dynamicTest(e.toString(), () -> run(e)));
  }

  /**
   * Which rule's examples lack an answer that its page allows, beside one that is fine or silent.
   */
  @TestFactory
  Stream<DynamicTest> everyAnswerOfARuleHasAnExample() {
    List<Example> all = Example.all();
    return ENGINE.book().all().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.name(), () -> complete(rule, all)));
  }

  @Test
  void theBasePlanHasNothingWrong() {
    List<Finding> bad =
        findings(Fragment.base()).stream()
            .filter(
                f ->
                    f.outcome() == Outcome.VIOLATION
                        || f.outcome() == Outcome.WARNING
                        || f.outcome() == Outcome.CANNOT_TELL)
            .toList();

    assertThat(bad).extracting(f -> f.rule() + ": " + f.headline()).isEmpty();
  }

  private static void complete(RuleText rule, List<Example> all) {
    List<String> expected =
        all.stream().filter(e -> e.rule().equals(rule.name())).map(Example::expect).toList();
    List<String> needed = new ArrayList<>();
    rule.bounds().forEach(b -> needed.add(b.outcome().words()));
    rule.situations().values().forEach(s -> needed.add(s.outcome().words()));

    assertThat(expected).as("answers shown by the examples").containsAll(needed);
    assertThat(expected).as("an example where nothing is wrong").containsAnyOf("fine", "silent");
  }

  private static void run(Example example) {
    Fragment plan = Fragment.base();
    example.change().forEach(plan::change);
    List<Finding> answers =
        Ranking.ranked(findings(plan)).stream()
            .filter(f -> f.rule().equals(example.rule()))
            .filter(f -> example.at().map(f.at().name()::equals).orElse(true))
            .toList();

    String answer = answers.isEmpty() ? "silent" : answers.get(0).outcome().words();
    assertThat(answer).as("%s", answers).isEqualTo(example.expect());
    example.says().ifPresent(piece -> assertThat(answers.get(0).headline()).contains(piece));
  }

  private static List<Finding> findings(Fragment plan) {
    PlanReader.Read read = PlanReader.read("example", plan.bytes(), NOTHING);
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    return ENGINE.run(Facts.of(Bench.of(read.plan(), read.problems())));
  }
}
