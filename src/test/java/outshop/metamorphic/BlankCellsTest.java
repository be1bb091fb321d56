package outshop.metamorphic;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.catalogue.Part;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.report.Report;

/** A cell left blank never turns a violation or a warning into "fine". */
final class BlankCellsTest {

  @TestFactory
  Stream<DynamicTest> aBlankCellNeverMakesAFaultFine() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> blankEachCell(p)));
  }

  private static void blankEachCell(Path path) {
    Plan plan = Sample.plan(path);
    Map<String, Outcome> before = outcomes(Sample.report(plan));
    List<String> broken = new ArrayList<>();
    int blanked = 0;
    for (Fitted fitted : plan.parts()) {
      for (String column : columns(fitted.part())) {
        blanked++;
        Map<String, Outcome> after = outcomes(Sample.report(Changed.blank(plan, fitted, column)));
        before.forEach(
            (key, outcome) -> {
              if (outcome.compareTo(Outcome.WARNING) <= 0 && after.get(key) == Outcome.FINE) {
                broken.add(
                    fitted.name()
                        + "."
                        + column
                        + " blank: "
                        + key
                        + " was "
                        + outcome.words()
                        + ", is fine");
              }
            });
      }
    }

    assertThat(blanked).isGreaterThan(50);
    assertThat(broken).isEmpty();
  }

  private static TreeSet<String> columns(Part part) {
    TreeSet<String> columns = new TreeSet<>(part.numbers().keySet());
    columns.addAll(part.words().keySet());
    return columns;
  }

  /** The worst outcome of each rule at each place. */
  static Map<String, Outcome> outcomes(Report report) {
    Map<String, Outcome> outcomes = new HashMap<>();
    List<Finding> all = new ArrayList<>(report.findings());
    all.addAll(report.cannotTell());
    all.addAll(report.fine());
    for (Finding finding : all) {
      outcomes.merge(
          finding.rule() + " at " + finding.at().name(),
          finding.outcome(),
          (a, b) -> a.compareTo(b) <= 0 ? a : b);
    }
    return outcomes;
  }
}
