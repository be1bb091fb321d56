package outshop.metamorphic;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.catalogue.Kind;
import outshop.findings.Outcome;
import outshop.plan.Fitted;
import outshop.plan.Plan;

/** More room never makes a fault, and more volts never take an over-voltage fault away. */
final class MarginsTest {
  private static final long SEED = Long.getLong("outshop.seed", 20261125L);

  /** Limits of which more is only ever better, by kind. */
  private static final Map<Kind, List<String>> MORE_IS_BETTER =
      Map.of(
          Kind.RECEIVER, List.of("input_max_volts", "continuous_amps", "peak_amps"),
          Kind.DECODER,
              List.of(
                  "input_max_volts",
                  "motor_continuous_amps",
                  "motor_peak_amps",
                  "functions_total_amps",
                  "function_amps",
                  "function_peak_amps"),
          Kind.SWITCH, List.of("dc_amps", "dc_volts"),
          Kind.PACK, List.of("continuous_amps", "max_charge_amps"),
          Kind.JACK, List.of("break_amps", "contact_amps", "dc_volts"),
          Kind.FUSE, List.of("dc_volts", "breaking_amps"),
          Kind.SPEAKER, List.of("watts"));

  @TestFactory
  Stream<DynamicTest> aLargerMarginNeverAddsAViolation() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> widen(p)));
  }

  @TestFactory
  Stream<DynamicTest> raisingTheFullVoltageNeverRemovesAnOverVoltageViolation() {
    return Sample.plans().stream()
        .map(p -> DynamicTest.dynamicTest(p.getFileName().toString(), () -> raise(p)));
  }

  private static void widen(Path path) {
    SplittableRandom random = new SplittableRandom(SEED);
    Plan plan = Sample.plan(path);
    List<String> before = violations(plan);
    List<String> added = new ArrayList<>();
    int widened = 0;
    for (Fitted fitted : plan.parts()) {
      for (String column : MORE_IS_BETTER.getOrDefault(fitted.kind(), List.of())) {
        Double value = fitted.part().numbers().get(column);
        if (value == null || value.isNaN()) {
          continue;
        }
        widened++;
        double factor = 1 + 3 * random.nextDouble();
        for (String violation : violations(Changed.number(plan, fitted, column, value * factor))) {
          if (!before.contains(violation)) {
            added.add(fitted.name() + "." + column + " x " + factor + ": " + violation);
          }
        }
      }
    }

    assertThat(widened).isPositive();
    assertThat(added).as("seed %d", SEED).isEmpty();
  }

  private static void raise(Path path) {
    SplittableRandom random = new SplittableRandom(SEED);
    Plan plan = Sample.plan(path);
    Fitted pack = plan.parts(Kind.PACK).get(0);
    List<String> before = new ArrayList<>();
    double volts = 8;
    for (int i = 0; i < 12; i++) {
      volts += 0.2 + 3 * random.nextDouble();
      List<String> now =
          violations(Changed.number(plan, pack, "full_volts", volts)).stream()
              .filter(
                  v ->
                      v.startsWith("voltage/")
                          && (v.contains("over-maximum") || v.contains("over-voltage")))
              .toList();

      assertThat(now).as("full volts %s, seed %d", volts, SEED).containsAll(before);
      before = now;
    }
    assertThat(before).as("at %s V something is over its limit", volts).isNotEmpty();
  }

  private static List<String> violations(Plan plan) {
    return BlankCellsTest.outcomes(Sample.report(plan)).entrySet().stream()
        .filter(e -> e.getValue() == Outcome.VIOLATION)
        .map(Map.Entry::getKey)
        .sorted()
        .toList();
  }
}
