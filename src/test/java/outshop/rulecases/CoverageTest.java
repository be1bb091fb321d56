package outshop.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.rulebook.RuleIndex;
import outshop.rules.Bound;
import outshop.rules.RuleText;
import outshop.rules.Situation;

/**
 * Every rule shows what it can answer, and the pages that say so are current. With {@code
 * -Doutshop.approve=true} they are written anew.
 */
final class CoverageTest {

  @TestFactory
  Stream<DynamicTest> everyRuleShowsWhatItCanAnswer() {
    return Sample.ENGINE.book().all().stream()
        .map(
            rule ->
                DynamicTest.dynamicTest(
                    rule.name(), () -> assertThat(Coverage.of(rule).gaps()).isEmpty()));
  }

  @Test
  void whatIsNotShownIsNoticed() {
    RuleText real = Sample.ENGINE.book().find("voltage/motor-slow").orElseThrow();
    Coverage bare = new Coverage(asking(real), List.of("What it says"), List.of());

    assertThat(bare.gaps())
        .contains(
            "page without Why",
            "page without When it does not apply",
            "no example that fails",
            "no example that passes",
            "no example with a value missing, though it compares",
            "only one side shown of violation over 300 %",
            "no example of its situation never");
  }

  /** The examples of a real rule do not reach a bound far away. */
  @Test
  void aBoundThatIsShownFromOneSideOnlyIsNoticed() {
    RuleText real = Sample.ENGINE.book().find("voltage/motor-slow").orElseThrow();
    Coverage far = new Coverage(asking(real), Coverage.of(real).parts(), Answered.of(real.name()));

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

  @Test
  void theCoverageTableIsCurrent() throws IOException {
    current("docs/coverage.md", Coverage.text(Sample.ENGINE.book().all()));
  }

  @Test
  void theRuleIndexIsCurrent() throws IOException {
    current("docs/rules.md", RuleIndex.text(Sample.ENGINE.book(), Reads.recorded()));
  }

  private static void current(String file, String text) throws IOException {
    Path path = Path.of(file);
    if (Boolean.getBoolean("outshop.approve")) {
      Files.writeString(path, text);
    }
    assertThat(path).as("run the tests with -Doutshop.approve=true").exists();
    assertThat(Files.readString(path))
        .as("%s; run the tests with -Doutshop.approve=true and read the difference", file)
        .isEqualTo(text);
  }
}
