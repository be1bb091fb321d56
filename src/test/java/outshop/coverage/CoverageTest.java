package outshop.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.mutation.MutationRecord;
import outshop.outside.Proof;
import outshop.rules.Bound;
import outshop.rules.RuleText;
import outshop.rules.Situation;

/** Every rule shows what it can answer and what stands behind it. */
final class CoverageTest {
  private static final MutationRecord.Entry NO_RECORD =
      new MutationRecord.Entry(Optional.empty(), List.of("mutants forgotten"));

  @TestFactory
  Stream<DynamicTest> everyRuleShowsWhatItCanAnswer() {
    return Coverage.of(Sample.ENGINE.book().all())
        .map(
            coverage ->
                DynamicTest.dynamicTest(
                    coverage.rule().name(), () -> assertThat(coverage.gaps()).isEmpty()));
  }

  @Test
  void whatIsNotShownIsNoticed() {
    RuleText real = Sample.ENGINE.book().find("voltage/motor-slow").orElseThrow();
    Coverage bare =
        new Coverage(
            asking(real), List.of("What it says"), List.of(), new Proof("my uncle"), NO_RECORD);

    assertThat(bare.gaps())
        .contains(
            "page without Why",
            "page without When it does not apply",
            "no example that fails",
            "no example that passes",
            "no example with a value missing, though it compares",
            "only one side shown of violation over 300 %",
            "no example of its situation never",
            "mutants forgotten")
        .anyMatch(gap -> gap.startsWith("no proof outside"));
  }

  /** The examples of a real rule do not reach a bound far away. */
  @Test
  void aBoundThatIsShownFromOneSideOnlyIsNoticed() {
    RuleText real = Sample.ENGINE.book().find("voltage/motor-slow").orElseThrow();
    Coverage whole = Coverage.of(List.of(real)).findFirst().orElseThrow();
    Coverage far =
        new Coverage(asking(real), whole.parts(), whole.shown(), whole.proof(), whole.mutants());

    assertThat(far.gaps())
        .containsExactly(
            "only one side shown of violation over 300 %", "no example of its situation never");
  }

  private static RuleText asking(RuleText real) {
    return new RuleText(
        real.name(),
        real.title(),
        List.of(new Bound(Outcome.VIOLATION, Consequence.HARM, 3, true)),
        Map.of(
            "never", new Situation("never", Outcome.VIOLATION, Consequence.HARM, "{name} is blue")),
        false,
        real.basis(),
        real.source(),
        real.headline(),
        real.fine(),
        real.why(),
        real.cures());
  }
}
