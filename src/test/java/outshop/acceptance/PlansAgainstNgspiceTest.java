package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.circuit.LoadCase;
import outshop.circuit.solve.Network;
import outshop.circuit.solve.NoSolution;
import outshop.circuit.solve.Solver;
import outshop.circuit.solve.Stored;
import outshop.figures.Bench;

/**
 * The circuits of the demo plans, given to ngspice, have the same figures: four load cases and
 * charging of each plan that can be solved, every element's current and voltage.
 */
final class PlansAgainstNgspiceTest {
  private static final List<LoadCase> CASES =
      List.of(
          new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING),
          new LoadCase(LoadCase.Charge.NOMINAL, LoadCase.Drive.CRUISING),
          new LoadCase(LoadCase.Charge.EMPTY, LoadCase.Drive.SLIPPING),
          new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.BLOCKED));

  private record Circuit(String name, Network network) {}

  @TestFactory
  Stream<DynamicTest> everySolvedCaseAgrees() {
    return circuits().stream().map(c -> DynamicTest.dynamicTest(c.name(), () -> check(c)));
  }

  @Test
  void enoughPlansAndCircuitsAreCompared() {
    List<Circuit> circuits = circuits();

    assertThat(circuits).hasSizeGreaterThanOrEqualTo(40);
    assertThat(circuits.stream().map(c -> c.name().split("--")[0]).distinct())
        .hasSizeGreaterThanOrEqualTo(10);
  }

  private static void check(Circuit circuit) throws NoSolution {
    double difference =
        Stored.check(circuit.name(), circuit.network(), Solver.solve(circuit.network()));

    assertThat(difference).isLessThan(Stored.WITHIN_FOR_CONSTANT_POWER);
  }

  private static List<Circuit> circuits() {
    List<Circuit> circuits = new ArrayList<>();
    for (Path path : Sample.plans()) {
      String plan = "plan-" + path.getFileName().toString().replace(".yaml", "");
      Bench bench = Bench.of(Sample.plan(path), List.of());
      for (LoadCase loadCase : CASES) {
        String name =
            plan + "--" + loadCase.words().toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
        bench.cases().network(loadCase).ifPresent(n -> circuits.add(new Circuit(name, n)));
      }
      Optional<Network> charging = bench.cases().chargingNetwork();
      charging.ifPresent(n -> circuits.add(new Circuit(plan + "--charging", n)));
    }
    return circuits;
  }
}
