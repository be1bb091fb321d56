package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How far apart values may lie, and which are refused. */
final class RangeTest {
  private static final Percentage NINE_DIGITS = Percentage.withPercentage(1e-7);

  /** A microohm wire carries a milliamp: its nanovolt keeps its digits beside 16.8 V. */
  @Test
  void aShortThickWireKeepsItsDigits() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("pack", "plus", "0", 16.8, 0.1)
            .resistor("wire", "plus", "far", 1e-6)
            .sink("radio", "far", "0", 1e-3)
            .solve();
    assertThat(solution.amps("wire")).isCloseTo(1e-3, NINE_DIGITS);
    assertThat(solution.volts("wire")).isCloseTo(1e-9, NINE_DIGITS);
  }

  /** Two packs alike to a part in ten million, by milliohms: what flows between them. */
  @Test
  void packsInParallelKeepTheDigitsOfTheirDifference() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("one", "plus", "0", 16.8, 0.001)
            .source("other", "plus", "0", 16.8 + 0x1p-20, 0.001)
            .solve();
    assertThat(solution.amps("one")).isCloseTo(0x1p-20 / 0.002, NINE_DIGITS);
  }

  @Test
  void packsAlikeSendEachOtherNothing() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("one", "plus", "0", 16.8, 1e-6)
            .source("other", "plus", "0", 16.8, 1e-6)
            .solve();
    assertThat(solution.amps("one")).isZero();
    assertThat(solution.amps("other")).isZero();
  }

  /** From 1 microohm to 1 gigohm in one string. */
  @Test
  void fifteenDecades() throws NoSolution {
    Sketch sketch = new Sketch().source("pack", "n-7", "0", 12, 1e-6);
    double ohms = 1e-6;
    for (int decade = -6; decade <= 9; decade++) {
      sketch.resistor("r" + decade, "n" + (decade - 1), "n" + decade, Math.pow(10, decade));
      ohms += Math.pow(10, decade);
    }
    Solution solution = sketch.resistor("last", "n9", "0", 1).solve();
    for (int decade = -6; decade <= 9; decade++) {
      assertThat(solution.amps("r" + decade)).isCloseTo(12 / (ohms + 1), NINE_DIGITS);
      assertThat(solution.volts("r" + decade))
          .isCloseTo(12 / (ohms + 1) * Math.pow(10, decade), NINE_DIGITS);
    }
  }

  /** A bridge in balance: nothing flows across, to the last digit that rounding leaves. */
  @Test
  void aBalancedBridge() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("pack", "top", "0", 12, 0.1)
            .resistor("a", "top", "left", 10)
            .resistor("b", "left", "0", 20)
            .resistor("c", "top", "right", 30)
            .resistor("d", "right", "0", 60)
            .resistor("across", "left", "right", 0.001)
            .solve();
    assertThat(solution.amps("across")).isCloseTo(0, within(1e-12));
  }

  /** A ladder of 150 cells of resistors, against the closed form of the golden ratio. */
  @Test
  void aLongLadder() throws NoSolution {
    Sketch sketch = new Sketch().source("pack", "n0", "0", 10, Sketch.NO_OHMS);
    for (int cell = 1; cell <= 150; cell++) {
      sketch.resistor("along" + cell, "n" + (cell - 1), "n" + cell, 1);
      sketch.resistor("down" + cell, "n" + cell, "0", 1);
    }
    double golden = (1 + Math.sqrt(5)) / 2;
    assertThat(-sketch.solve().amps("pack")).isCloseTo(10 / golden, NINE_DIGITS);
  }

  static List<Element> refused() {
    return List.of(
        new Element.Source("x", 0, 1, Double.NaN, 1),
        new Element.Source("x", 0, 1, 12, 0),
        new Element.Resistor("x", 0, 1, 0),
        new Element.Resistor("x", 0, 1, -1),
        new Element.Resistor("x", 0, 1, Double.NaN),
        new Element.Resistor("x", 0, 1, Double.POSITIVE_INFINITY),
        new Element.Resistor("x", 0, 2, 1),
        new Element.Resistor("x", -1, 0, 1),
        new Element.Drop("x", 0, 1, -0.1, 1),
        new Element.Drop("x", 0, 1, 2, 0),
        new Element.Drop("x", 0, 1, 2, 1e9),
        new Element.Sink("x", 0, 1, -1),
        new Element.Sink("x", 0, 1, Double.NaN),
        new Element.PowerSink("x", 0, 1, -1, 3),
        new Element.PowerSink("x", 0, 1, 5, 0),
        new Element.Supply("x", 0, 1, -1),
        new Element.Regulator("x", 0, 1, 2, 1, 5, 0.05, 0.9),
        new Element.Regulator("x", 0, 1, 0, 1, 0, 0.05, 0.9),
        new Element.Regulator("x", 0, 1, 0, 1, 5, 0, 0.9),
        new Element.Regulator("x", 0, 1, 0, 1, 5, 0.05, 1.1),
        new Element.Regulator("x", 0, 1, 0, 1, 5, 0.05, Double.NaN));
  }

  @ParameterizedTest
  @MethodSource("refused")
  void valuesOutOfRangeAreRefused(Element element) {
    Network network = new Network(List.of("plus", "minus"), List.of(element));
    assertThatThrownBy(() -> Solver.solve(network))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("x ")
        .hasMessageContaining(element.toString());
  }

  @Test
  void twoElementsOfOneNameAreRefused() {
    Sketch sketch = new Sketch().resistor("wire", "plus", "0", 1).sink("wire", "plus", "0", 1);
    assertThatThrownBy(sketch::solve)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("wire shares its name");
  }
}
