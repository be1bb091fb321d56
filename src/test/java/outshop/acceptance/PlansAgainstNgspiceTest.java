package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.circuit.solve.NoSolution;
import outshop.circuit.solve.Solver;
import outshop.circuit.solve.Stored;

/**
 * The circuits of the demo plans, given to ngspice, have the same figures: every element's current
 * and voltage.
 */
final class PlansAgainstNgspiceTest {
  @TestFactory
  Stream<DynamicTest> everySolvedCaseAgrees() {
    return PlanNetwork.all().stream().map(n -> DynamicTest.dynamicTest(n.name(), () -> check(n)));
  }

  @Test
  void enoughPlansAndCircuitsAreCompared() {
    List<PlanNetwork> networks = PlanNetwork.all();

    assertThat(networks).hasSizeGreaterThanOrEqualTo(40);
    assertThat(networks.stream().map(PlanNetwork::plan).distinct()).hasSizeGreaterThanOrEqualTo(10);
  }

  private static void check(PlanNetwork circuit) throws NoSolution {
    double difference =
        Stored.check(circuit.name(), circuit.network(), Solver.solve(circuit.network()));

    assertThat(difference).isLessThan(Stored.WITHIN_FOR_CONSTANT_POWER);
  }
}
