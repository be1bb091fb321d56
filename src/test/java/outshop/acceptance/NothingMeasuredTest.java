package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.plan.Plan;
import outshop.report.Report;

/**
 * A plan in which every measurement is missing: parts chosen, nothing read on the locomotive, no
 * lead's length, nothing read on the bench. It gives no violation that rests on an assumption, and
 * a list of what to measure, the value that decides most rules first.
 */
final class NothingMeasuredTest {

  @TestFactory
  Stream<DynamicTest> everyDemoPlanWithoutItsMeasurements() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> check(p)));
  }

  private static void check(Path path) {
    Plan bare = Sample.plan(path).without(NothingMeasuredTest::isMeasurement);
    Report report = Sample.report(bare);

    assertThat(report.findings().stream().filter(NothingMeasuredTest::restsOnAssumption))
        .extracting(Finding::headline)
        .isEmpty();
    assertThat(report.wanted()).isNotEmpty();
    assertThat(report.wanted().stream().map(w -> w.rules().size()).toList())
        .isSortedAccordingTo((a, b) -> b - a);
  }

  /**
   * A violation that the kindest end of the assumed range would not have: those are softened,
   * unless the rule protects people.
   */
  private static boolean restsOnAssumption(Finding finding) {
    if (finding.outcome() != Outcome.VIOLATION || finding.demand().isEmpty()) {
      return false;
    }
    boolean over = finding.demand().get().value() > finding.limit().orElseThrow().value();
    double demand = over ? finding.demand().get().low() : finding.demand().get().high();
    double limit = over ? finding.limit().get().high() : finding.limit().get().low();
    return over ? demand <= limit : demand >= limit;
  }

  /**
   * Readings: all that is stated of the locomotive but the kinds and names of its things, the
   * lengths, the bench readings.
   */
  private static boolean isMeasurement(String path, boolean number) {
    return number
            && (path.startsWith("locomotive.")
                || path.startsWith("wiring.")
                || path.startsWith("measured."))
        || path.endsWith(".joined_to")
        || path.endsWith(".left_in_leads");
  }
}
