package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.circuit.Trial;
import outshop.circuit.solve.NoSolution;
import outshop.circuit.solve.Solver;
import outshop.circuit.solve.Stored;
import outshop.figures.Bench;
import outshop.sheets.Trials;

/**
 * The circuits of the demo plans on a bench supply and standing on the pack, given to ngspice, have
 * the same figures: every element's current and voltage.
 */
final class BenchTrialsAgainstNgspiceTest {
  @TestFactory
  Stream<DynamicTest> everyTrialAgrees() {
    return all().stream().map(n -> DynamicTest.dynamicTest(n.name(), () -> check(n)));
  }

  @Test
  void enoughPlansAndTrialsAreCompared() {
    assertThat(all()).hasSizeGreaterThanOrEqualTo(60);
    assertThat(all().stream().map(PlanNetwork::plan).distinct())
        .hasSizeGreaterThanOrEqualTo(Sample.plans().size() - 2);
  }

  private static void check(PlanNetwork circuit) throws NoSolution {
    double difference =
        Stored.check(circuit.name(), circuit.network(), Solver.solve(circuit.network()));

    assertThat(difference).isLessThan(Stored.WITHIN_FOR_CONSTANT_POWER);
  }

  private static List<PlanNetwork> all() {
    List<PlanNetwork> all = new ArrayList<>();
    for (Path path : Sample.plans()) {
      String plan = path.getFileName().toString().replace(".yaml", "");
      Bench bench = Bench.of(Sample.plan(path), List.of());
      Trials trials = Trials.of(bench);
      add(all, plan, "idle", bench, trials.idle());
      List<String> outputs = bench.plan().names("outputs");
      if (!outputs.isEmpty()) {
        add(all, plan, "lit", bench, trials.lit(trials.idle(), outputs.get(0)));
      }
      add(all, plan, "sounding", bench, trials.sounding(trials.idle()));
      add(all, plan, "turning", bench, trials.turning(trials.idle()));
      if (bench.pack().isPresent()) {
        add(all, plan, "pack", bench, trials.onPack());
      }
    }
    return all;
  }

  private static void add(
      List<PlanNetwork> all, String plan, String name, Bench bench, Trial trial) {
    bench
        .cases()
        .run(trial)
        .network()
        .ifPresent(n -> all.add(new PlanNetwork(plan, "bench-" + plan + "--" + name, n)));
  }
}
