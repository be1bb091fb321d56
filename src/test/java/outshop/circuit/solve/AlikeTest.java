package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Networks that differ in their values only share what follows from how they hang together. */
final class AlikeTest {
  private static final int PLUS = 0;
  private static final int MINUS = 1;
  private static final int OUT = 2;
  private static final int OUT_MINUS = 3;

  private static final List<Element> ELEMENTS =
      List.of(
          new Element.Source("pack", PLUS, MINUS, 14.4, 0.1),
          new Element.Resistor("wire", PLUS, OUT, 0.2),
          new Element.Regulator("regulator", OUT, MINUS, OUT_MINUS, MINUS, 5, 0.05, 0.9),
          new Element.Sink("lamp", OUT_MINUS, MINUS, 0.1));

  private static final Network NETWORK =
      new Network(List.of("plus", "minus", "out", "held"), ELEMENTS);

  private static List<Element> with(int place, Element element) {
    List<Element> elements = new ArrayList<>(ELEMENTS);
    elements.set(place, element);
    return elements;
  }

  @Test
  void otherValuesGiveWhatTheyGiveInANetworkOfTheirOwn() throws NoSolution {
    List<Element> others = with(1, new Element.Resistor("wire", PLUS, OUT, 20));
    Network alike = NETWORK.with(others);

    List<Solution> together = Solver.solve(List.of(NETWORK, alike));
    Solution alone = Solver.solve(new Network(NETWORK.nets(), others));

    assertThat(together).hasSize(2);
    assertThat(together.get(0).amps("pack")).isNotEqualTo(together.get(1).amps("pack"));
    for (int place = 0; place < others.size(); place++) {
      assertThat(together.get(1).amps(place)).isCloseTo(alone.amps(place), within(1e-10));
      assertThat(together.get(1).volts(place)).isCloseTo(alone.volts(place), within(1e-10));
    }
    assertThat(alike.elements()).isEqualTo(others);
    assertThat(alike.layout()).isSameAs(NETWORK.layout());
  }

  static List<List<Element>> unlike() {
    return List.of(
        ELEMENTS.subList(0, 3),
        with(1, new Element.Resistor("other", PLUS, OUT, 0.2)),
        with(1, new Element.Resistor("wire", MINUS, OUT, 0.2)),
        with(1, new Element.Resistor("wire", PLUS, OUT_MINUS, 0.2)),
        with(1, new Element.Drop("wire", PLUS, OUT, 0.7, 0.2)),
        with(2, new Element.Regulator("regulator", OUT, MINUS, PLUS, MINUS, 5, 0.05, 0.9)),
        with(2, new Element.Regulator("regulator", OUT, MINUS, OUT_MINUS, PLUS, 5, 0.05, 0.9)));
  }

  @ParameterizedTest
  @MethodSource("unlike")
  void whatDiffersInMoreThanItsValuesIsRefused(List<Element> others) {
    assertThatThrownBy(() -> NETWORK.with(others))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("more than their values");
  }

  @Test
  void valuesOutOfRangeAreRefusedAsEver() {
    Network wrong = NETWORK.with(with(1, new Element.Resistor("wire", PLUS, OUT, 0)));

    assertThatThrownBy(() -> Solver.solve(List.of(NETWORK, wrong)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("wire needs a resistance above zero");
  }

  @Test
  void networksOfTheSameNetsAndElementsAreEqual() {
    Network same = new Network(NETWORK.nets(), ELEMENTS);
    Network other = NETWORK.with(with(3, new Element.Sink("lamp", OUT_MINUS, MINUS, 0.2)));

    assertThat(same).isEqualTo(NETWORK).hasSameHashCodeAs(NETWORK);
    assertThat(other).isNotEqualTo(NETWORK);
    assertThat(NETWORK).isNotEqualTo("network");
    assertThat(NETWORK.toString()).contains("plus").contains("regulator");
  }

  @Test
  void anElementHasItsPlaceInEverySolution() throws NoSolution {
    Solution solution = Solver.solve(NETWORK);

    assertThat(solution.place("lamp")).isEqualTo(3);
    assertThat(solution.place("nobody")).isEqualTo(Solution.NONE);
    assertThat(solution.elements()).isEqualTo(ELEMENTS);
    assertThat(solution.watts("lamp")).isEqualTo(solution.amps(3) * solution.volts(3));
    assertThat(solution.netVolts()).hasSize(4);
    assertThat(solution.netVolts(MINUS)).isZero();
    assertThatThrownBy(() -> solution.amps("nobody"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no element nobody");
  }
}
