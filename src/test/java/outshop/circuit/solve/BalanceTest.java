package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Kirchhoff's laws and the laws of the elements, worked out here once more from the published
 * figures, over networks made from seeds.
 */
final class BalanceTest {
  private static final int SEEDS = 1000;

  @Test
  void currentsBalanceAtEveryNet() throws NoSolution {
    for (long seed = 0; seed < SEEDS; seed++) {
      Network network = RandomNetwork.of(seed);
      Solution solution = solved(network, seed);
      double[] sum = new double[network.nets().size()];
      double[] size = new double[network.nets().size()];
      double most = 0;
      for (Element element : network.elements()) {
        double amps = solution.amps(element.name());
        most = Math.max(most, Math.abs(amps));
        flow(element.a(), element.b(), amps, sum, size);
        if (element instanceof Element.Regulator regulator) {
          double given = given(regulator, solution);
          flow(regulator.outB(), regulator.outA(), given, sum, size);
        }
      }
      for (int net = 0; net < sum.length; net++) {
        // The output of a regulator is worked out from net volts here, to about 1e-12 A.
        assertThat(sum[net])
            .as("seed %d, net %s", seed, network.nets().get(net))
            .isCloseTo(0, within(1e-9 * size[net] + 1e-12 * most + 1e-12));
      }
    }
  }

  private static void flow(int a, int b, double amps, double[] sum, double[] size) {
    sum[a] += amps;
    sum[b] -= amps;
    size[a] += Math.abs(amps);
    size[b] += Math.abs(amps);
  }

  @Test
  void voltagesAreThoseBetweenTheNets() throws NoSolution {
    for (long seed = 0; seed < SEEDS; seed++) {
      Network network = RandomNetwork.of(seed);
      Solution solution = solved(network, seed);
      for (Element element : network.elements()) {
        assertThat(solution.volts(element.name()))
            .as("seed %d, %s", seed, element)
            .isCloseTo(between(solution, element.a(), element.b()), within(1e-11));
      }
    }
  }

  @Test
  void everyElementKeepsItsLaw() throws NoSolution {
    for (long seed = 0; seed < SEEDS; seed++) {
      Network network = RandomNetwork.of(seed);
      Solution solution = solved(network, seed);
      for (Element element : network.elements()) {
        double volts = solution.volts(element.name());
        double amps = solution.amps(element.name());
        double expected = law(element, volts, solution);
        double rounding = 1e-14 * (1 + Math.abs(volts)) / leastOhms(element);
        assertThat(amps)
            .as("seed %d, %s at %s V", seed, element, volts)
            .isCloseTo(expected, within(1e-9 * Math.abs(expected) + rounding));
      }
    }
  }

  private static double law(Element element, double volts, Solution solution) {
    if (element instanceof Element.Source source) {
      return (volts - source.emfVolts()) / source.ohms();
    }
    if (element instanceof Element.Resistor resistor) {
      return volts / resistor.ohms();
    }
    if (element instanceof Element.Drop drop) {
      return Math.max((volts - drop.volts()) / drop.ohms(), volts * 1e-9);
    }
    if (element instanceof Element.Sink sink) {
      return volts < 0 ? volts * 1e-9 : sink.amps() * Math.min(1, volts / 1.0);
    }
    if (element instanceof Element.PowerSink sink) {
      double knee = sink.kneeVolts();
      double below = volts < 0 ? volts * 1e-9 : sink.watts() * volts / (knee * knee);
      return volts < knee ? below : sink.watts() / volts;
    }
    if (element instanceof Element.Supply supply) {
      return -supply.amps();
    }
    Element.Regulator regulator = (Element.Regulator) element;
    double given = given(regulator, solution);
    double held = Math.max(volts, regulator.outVolts());
    double drawn =
        regulator.efficiency() == 0
            ? given
            : regulator.outVolts() * given / (held * regulator.efficiency());
    return Math.max(drawn, Math.max(0, volts) * 1e-9) + Math.min(0, volts) * 1e-9;
  }

  private static double given(Element.Regulator regulator, Solution solution) {
    double in = between(solution, regulator.a(), regulator.b());
    double held = Math.min(regulator.outVolts(), Math.max(0, in));
    double room = held - between(solution, regulator.outA(), regulator.outB());
    return room > 0 ? room / regulator.outOhms() : room * 1e-9;
  }

  private static double leastOhms(Element element) {
    if (element instanceof Element.Source source) {
      return source.ohms();
    }
    if (element instanceof Element.Resistor resistor) {
      return resistor.ohms();
    }
    if (element instanceof Element.Drop drop) {
      return drop.ohms();
    }
    return 0.01;
  }

  /** As many watts go in as come out; a regulator keeps the rest of what it draws. */
  @Test
  void powerBalances() throws NoSolution {
    for (long seed = 0; seed < SEEDS; seed++) {
      Network network = RandomNetwork.of(seed);
      Solution solution = solved(network, seed);
      double sum = 0;
      double size = 0;
      for (Element element : network.elements()) {
        double watts = solution.watts(element.name());
        if (element instanceof Element.Regulator regulator) {
          double out = between(solution, regulator.outA(), regulator.outB());
          double loss = watts - given(regulator, solution) * out;
          watts = loss;
        }
        sum += watts;
        size += Math.abs(watts);
      }
      assertThat(sum).as("seed %d", seed).isCloseTo(0, within(1e-9 * size + 1e-9));
    }
  }

  /** Shuffled elements and nets turned about give the same figures. */
  @Test
  void orderDecidesNothing() throws NoSolution {
    for (long seed = 0; seed < SEEDS; seed += 10) {
      Network network = RandomNetwork.of(seed);
      if (network.elements().stream().anyMatch(BalanceTest::mayHaveTwoFits)) {
        continue;
      }
      List<Element> shuffled = new ArrayList<>(network.elements());
      Collections.shuffle(shuffled, new Random(seed));
      Solution solution = solved(network, seed);
      Solution again = solved(new Network(network.nets(), shuffled), seed);
      for (Element element : network.elements()) {
        double amps = solution.amps(element.name());
        assertThat(again.amps(element.name()))
            .as("seed %d, %s", seed, element)
            .isCloseTo(amps, within(1e-8 * Math.abs(amps) + 1e-10));
      }
    }
  }

  private static boolean mayHaveTwoFits(Element element) {
    return element instanceof Element.PowerSink || element instanceof Element.Regulator;
  }

  @Test
  void theSameNetworkGivesTheSameBits() throws NoSolution {
    for (long seed = 0; seed < 200; seed++) {
      Solution one = solved(RandomNetwork.of(seed), seed);
      Solution other = solved(RandomNetwork.of(seed), seed);
      assertThat(other.elementAmps()).as("seed %d", seed).isEqualTo(one.elementAmps());
      assertThat(other.netVolts()).as("seed %d", seed).isEqualTo(one.netVolts());
    }
  }

  private static double between(Solution solution, int a, int b) {
    return solution.netVolts()[a] - solution.netVolts()[b];
  }

  private static Solution solved(Network network, long seed) {
    try {
      return Solver.solve(network);
    } catch (NoSolution e) {
      throw new AssertionError("seed " + seed + ": " + e.getMessage(), e);
    }
  }
}
