package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.report.Report;

/**
 * Every demo plan gives exactly the findings, with exactly the numbers, that the comment at its
 * head says. With {@code -Doutshop.approve=true} the comments are written anew, to be read before
 * they are committed.
 */
final class DemoPlansTest {
  private static final String HEAD = "# Findings:";

  @TestFactory
  Stream<DynamicTest> everyPlanFindsWhatItsHeadSays() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> compare(p)));
  }

  @Test
  void fourPlansAreSound() {
    List<Path> sound = Sample.plans().stream().filter(p -> bad(p) == 0).toList();

    assertThat(sound).as("plans without a violation or a warning").hasSizeGreaterThanOrEqualTo(4);
  }

  @Test
  void everyFamilyFiresOnSomePlan() {
    List<String> families =
        Sample.plans().stream()
            .flatMap(p -> Sample.report(p).findings().stream())
            .map(f -> f.rule().substring(0, f.rule().indexOf('/')))
            .distinct()
            .toList();

    assertThat(families)
        .containsAll(Sample.ENGINE.book().all().stream().map(r -> r.family()).distinct().toList());
  }

  private static long bad(Path plan) {
    return Sample.report(plan).findings().stream()
        .filter(f -> f.outcome() != Outcome.ADVICE)
        .count();
  }

  private static void compare(Path plan) throws IOException {
    List<String> lines = Files.readAllLines(plan);
    int head = lines.indexOf(HEAD);
    assertThat(head).as("%s has a line \"%s\"", plan, HEAD).isNotNegative();
    int end = head + 1;
    while (end < lines.size() && lines.get(end).startsWith("#   ")) {
      end++;
    }
    List<String> found = found(Sample.report(plan));
    if (Boolean.getBoolean("outshop.approve")) {
      List<String> rewritten = new ArrayList<>(lines.subList(0, head + 1));
      rewritten.addAll(found);
      rewritten.addAll(lines.subList(end, lines.size()));
      Files.write(plan, rewritten);
      return;
    }
    assertThat(found).isEqualTo(lines.subList(head + 1, end));
  }

  private static List<String> found(Report report) {
    List<String> lines = new ArrayList<>();
    for (Finding finding : report.findings()) {
      lines.add(
          "#   "
              + finding.outcome().words()
              + " ("
              + finding.consequence().word()
              + ") "
              + finding.rule()
              + " at "
              + finding.at().name()
              + ": "
              + finding.headline());
    }
    for (Finding finding : report.cannotTell()) {
      lines.add("#   cannot tell " + finding.rule() + " at " + finding.at().name());
    }
    return lines;
  }
}
