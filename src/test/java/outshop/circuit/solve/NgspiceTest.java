package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The same networks given to an outside simulator have the same figures. */
final class NgspiceTest {
  static Stream<Arguments> networks() {
    return ComparedNetworks.all().entrySet().stream()
        .map(network -> Arguments.of(network.getKey(), network.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("networks")
  void agreesWithTheSimulator(String name, Network network) throws NoSolution {
    double difference = Stored.check(name, network, Solver.solve(network));
    assertThat(difference).isLessThan(Stored.WITHIN_FOR_CONSTANT_POWER);
  }

  /** Without loads of constant power and regulators: with them, two solutions may both be right. */
  static LongStream seeds() {
    return LongStream.range(0, 1000).filter(NgspiceTest::hasOneSolution).limit(15);
  }

  private static boolean hasOneSolution(long seed) {
    return RandomNetwork.of(seed).elements().stream()
        .noneMatch(
            element ->
                element instanceof Element.PowerSink || element instanceof Element.Regulator);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void agreesOnNetworksNobodyWouldBuild(long seed) throws NoSolution {
    Assumptions.assumeTrue(Ngspice.present(), "ngspice is not installed: not compared");
    Network network = RandomNetwork.of(seed);
    double difference =
        Stored.compare("seed " + seed, network, Solver.solve(network), Ngspice.run(network));
    assertThat(difference).isLessThan(Stored.WITHIN);
  }

  /** The comparison can fail: one figure off by 0.2 %, an element missing, no stored results. */
  @Test
  void aDifferenceIsFound() throws NoSolution {
    Network network = ComparedNetworks.seriesParallel();
    Solution solution = Solver.solve(network);
    Map<String, double[]> results = new LinkedHashMap<>();
    for (Element element : network.elements()) {
      String name = element.name();
      results.put(name, new double[] {solution.amps(name), solution.volts(name)});
    }
    assertThat(Stored.compare("same", network, solution, results)).isZero();
    results.get("motor")[0] *= 1.002;
    assertThatThrownBy(() -> Stored.compare("off", network, solution, results))
        .isInstanceOf(AssertionError.class)
        .hasMessageStartingWith("off: motor has ");
    results.get("motor")[0] /= 1.002;
    results.remove("motor");
    assertThatThrownBy(() -> Stored.compare("short", network, solution, results))
        .isInstanceOf(AssertionError.class)
        .hasMessageStartingWith("short: results of ");
    assertThatThrownBy(() -> Stored.read("never-stored"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("no stored results never-stored.txt");
  }
}
