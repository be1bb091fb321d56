package outshop.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/**
 * Runs every example beside every rule, through the whole flow from the plan's text to the
 * findings.
 */
final class RuleExamplesTest {
  private static final RuleEngine ENGINE = RuleEngine.load();

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
        ENGINE.run(Example.facts(Fragment.base())).stream()
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
    assertThat(example.failure(ENGINE.run(example.facts()))).isEmpty();
  }
}
