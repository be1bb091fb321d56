package outshop.metamorphic;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Part;
import outshop.findings.Finding;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.report.Report;

/** The order of rows and of parts changes nothing, down to the last digit of every finding. */
final class OrderTest {
  private static final long SEED = Long.getLong("outshop.seed", 20261125L);

  @TestFactory
  Stream<DynamicTest> orderChangesNothing() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> shuffle(p)));
  }

  private static void shuffle(Path path) {
    Random random = new Random(SEED);
    Plan plan = Sample.plan(path);
    List<String> before = sentences(Sample.report(plan));
    for (int round = 0; round < 3; round++) {
      List<Part> rows = new ArrayList<>(Sample.catalogue().all());
      Collections.shuffle(rows, random);
      List<Fitted> parts = new ArrayList<>(plan.parts());
      Collections.shuffle(parts, random);
      parts.addAll(plan.materials());
      Plan shuffled = plan.withParts(parts);

      assertThat(new Catalogue(rows).all()).containsExactlyElementsOf(Sample.catalogue().all());
      assertThat(sentences(Sample.report(shuffled))).as("seed %d", SEED).isEqualTo(before);
    }
  }

  private static List<String> sentences(Report report) {
    List<Finding> all = new ArrayList<>(report.findings());
    all.addAll(report.cannotTell());
    all.addAll(report.fine());
    assertThat(all).isNotEmpty();
    return all.stream().map(Finding::toString).toList();
  }
}
