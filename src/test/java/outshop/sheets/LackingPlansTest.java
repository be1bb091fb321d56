package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.render.sheet.SheetPage;

/** Sheets of plans that lack something: a kind of part, every measurement; and of two packs. */
final class LackingPlansTest {

  @TestFactory
  Stream<DynamicTest> everyDemoPlanWithoutOneKindOfPart() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> withoutEach(p)));
  }

  private static void withoutEach(Path path) {
    Plan plan = Sample.plan(path);
    for (Kind kind : Kind.values()) {
      if (!plan.parts(kind).isEmpty()) {
        List<Fitted> left =
            new ArrayList<>(plan.parts().stream().filter(p -> !p.is(kind)).toList());
        left.addAll(plan.materials());
        drawn(plan.withParts(left), kind.word());
      }
    }
  }

  private static void drawn(Plan plan, String what) {
    Sheets sheets = Drawn.sheets(plan);
    assertThat(Drawn.names(sheets.bench()))
        .as(what)
        .contains("rails-apart")
        .doesNotHaveDuplicates();
    assertThat(sheets.bench().steps())
        .as(what)
        .allSatisfy(
            step -> {
              if (step.expected() instanceof Expected.Untold untold) {
                assertThat(untold.wants()).as("%s: %s", what, step.name()).isNotEmpty();
              }
              if (step.expected() instanceof Expected.Window w && w.to().isPresent()) {
                assertThat(w.from().value()).isLessThanOrEqualTo(w.to().get().value());
              }
            });
    assertThat(SheetPage.of(sheets.bench())).contains("</html>");
    assertThat(SheetPage.of(sheets.owner())).contains("</html>");
    assertThat(SheetPage.of(sheets.buying())).contains("</html>");
  }

  @TestFactory
  Stream<DynamicTest> everyDemoPlanWithoutItsMeasurements() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> unmeasured(p)));
  }

  private static void unmeasured(Path path) {
    Plan bare =
        Sample.plan(path)
            .without(
                (at, number) ->
                    number
                        && (at.startsWith("locomotive.")
                            || at.startsWith("wiring.")
                            || at.startsWith("measured.")));
    drawn(bare, "unmeasured");
    List<Expected> motor =
        Drawn.sheets(bare).bench().steps().stream()
            .filter(s -> s.name().equals("motor-amps"))
            .map(BenchSheet.Step::expected)
            .toList();
    assertThat(motor).allMatch(e -> e instanceof Expected.Untold);
  }

  /** Two packs side by side are both away while the supply stands in for them. */
  @Test
  void twoPacksMakeOneFeed() throws IOException {
    Plan one = Drawn.base();
    Fitted pack = one.parts(Kind.PACK).get(0);
    List<Fitted> parts = new ArrayList<>(one.parts());
    parts.addAll(one.materials());
    parts.add(new Fitted("pack-b", pack.part(), pack.place()));
    BenchSheet single = Drawn.sheets(one).bench();
    BenchSheet twin = Drawn.sheets(one.withParts(parts)).bench();
    assertThat(Drawn.step(twin, "idle-amps").expected())
        .isEqualTo(Drawn.step(single, "idle-amps").expected());
  }
}
