package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.cli.Check;
import outshop.findings.Outcome;
import outshop.sheets.BenchSheet.Power;
import outshop.sheets.BenchSheet.Stage;
import outshop.sheets.BenchSheet.Step;

/** The order of the bench sheet risks nothing: each step is guarded by those before it. */
final class BenchOrderTest {

  @TestFactory
  Stream<DynamicTest> everyDemoPlan() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> check(p)));
  }

  private static void check(Path path) {
    BenchSheet sheet = Drawn.demo(path).sheets().bench();
    List<Power> powers = sheet.stages().stream().map(Stage::power).toList();
    assertThat(powers).isSorted().doesNotHaveDuplicates().startsWith(Power.NOTHING);
    List<String> names = Drawn.names(sheet);
    assertThat(names).doesNotHaveDuplicates().allMatch(n -> n.matches("[a-z0-9-]+"));
    unpoweredGuards(sheet);
    first(sheet, Power.SUPPLY, "supply-volts");
    first(sheet, Power.PACK, "pack-volts");
    first(sheet, Power.CHARGER, "charger-volts");
    nothingIsPoweredTwice(sheet);
  }

  /** Both poles of the feed, and plus against minus, are tried before anything is powered. */
  private static void unpoweredGuards(BenchSheet sheet) {
    List<String> unpowered = sheet.stages().get(0).steps().stream().map(Step::name).toList();
    assertThat(unpowered).anyMatch(n -> n.startsWith("plus") && !n.equals("plus-to-minus"));
    assertThat(unpowered).anyMatch(n -> n.startsWith("minus"));
    assertThat(unpowered).contains("rails-apart").endsWith("plus-to-minus");
    assertThat(sheet.stages().get(0).steps())
        .allMatch(s -> s.expected().unit() == outshop.units.Unit.OHMS);
  }

  private static void first(BenchSheet sheet, Power power, String name) {
    Optional<Stage> stage = sheet.stages().stream().filter(s -> s.power() == power).findFirst();
    stage.ifPresent(s -> assertThat(s.steps().get(0).name()).isEqualTo(name));
  }

  /** Every stage says that what fed the one before is away. */
  private static void nothingIsPoweredTwice(BenchSheet sheet) {
    for (Stage stage : sheet.stages()) {
      String before = String.join(" ", stage.before().stream().map(Line::text).toList());
      switch (stage.power()) {
        case NOTHING -> assertThat(before).contains("Pack and charger out");
        case SUPPLY -> assertThat(before).contains("Pack and charger stay out");
        case PACK -> assertThat(before).contains("Supply away, charger out");
        case CHARGER -> assertThat(before).contains("every step above is inside");
      }
    }
  }

  @Test
  void theWholeOrderOfAPlan() throws Exception {
    assertThat(Drawn.names(Drawn.sheets(Drawn.base()).bench()))
        .containsExactly(
            "main-ohms",
            "out-1-ohms",
            "speaker-ohms",
            "frame-apart",
            "rails-apart",
            "plus-out-on",
            "plus-out-off",
            "plus-in-on",
            "plus-in-off",
            "minus-out",
            "minus-in",
            "charger-plus",
            "charger-minus",
            "plus-to-minus",
            "supply-volts",
            "off-amps",
            "first-amps",
            "idle-amps",
            "feed-volts",
            "out-1-rise",
            "sound-amps",
            "motor-amps",
            "plug-in-amps",
            "pack-volts",
            "pack-idle-amps",
            "pack-feed-volts",
            "running-amps",
            "charger-volts",
            "charging-load-volts",
            "charging-volts",
            "charged-volts");
  }

  /** A violation bars every stage with power, and each violation is named. */
  @TestFactory
  Stream<DynamicTest> aViolationBarsThePower() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> barred(p)));
  }

  private static void barred(Path path) {
    Check.Checked checked = Drawn.demo(path);
    List<String> violations =
        checked.report().findings().stream()
            .filter(f -> f.outcome() == Outcome.VIOLATION)
            .map(f -> f.headline())
            .toList();
    BenchSheet sheet = checked.sheets().bench();
    assertThat(sheet.standing()).extracting(BenchSheet.Standing::headline).isEqualTo(violations);
    for (Stage stage : sheet.stages()) {
      boolean powered = stage.power() != Power.NOTHING;
      assertThat(stage.barred()).isEqualTo(powered && !violations.isEmpty());
    }
    assertThat(checked.sheets().owner().standing()).isEqualTo(sheet.standing());
  }

  @Test
  void someDemoPlansAreBarredAndSomeAreNot() {
    HashSet<Boolean> seen = new HashSet<>();
    Sample.plans().forEach(p -> seen.add(Drawn.demo(p).sheets().bench().standing().isEmpty()));
    assertThat(seen).containsExactlyInAnyOrder(true, false);
  }
}
