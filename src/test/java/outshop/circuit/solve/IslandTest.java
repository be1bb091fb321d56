package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Parts of a network that do not touch, and parts that nothing feeds. */
final class IslandTest {
  @Test
  void whatNoSourceReachesIsDead() throws NoSolution {
    Sketch sketch =
        new Sketch()
            .source("pack", "plus", "minus", 12, 0.1)
            .resistor("bulb", "plus", "minus", 10)
            .resistor("wire", "cut", "far", 0.01)
            .sink("radio", "far", "cut", 0.5)
            .drop("lamp", "far", "cut", 2, 10)
            .powerSink("sound", "far", "cut", 4, 3)
            .regulator("regulator", "far", "out", "cut", 5, 0.9)
            .sink("camera", "out", "cut", 0.2)
            .loose("screw");
    Solution solution = sketch.solve();
    assertThat(solution.amps("bulb")).isCloseTo(12 / 10.1, within(1e-12));
    for (String dead : new String[] {"wire", "radio", "lamp", "sound", "regulator", "camera"}) {
      assertThat(solution.amps(dead)).as(dead).isZero();
      assertThat(solution.volts(dead)).as(dead).isZero();
    }
    assertThat(sketch.netVolts(solution, "far")).isZero();
    assertThat(sketch.netVolts(solution, "screw")).isZero();
  }

  @Test
  void everyIslandCountsFromTheMinusOfItsFirstSource() throws NoSolution {
    Sketch sketch =
        new Sketch()
            .source("lower", "mid", "bottom", 6, 0.1)
            .source("upper", "top", "mid", 6, 0.1)
            .resistor("bulb", "top", "bottom", 11.8)
            .source("tender", "tender plus", "tender minus", 7.2, 0.2)
            .resistor("tender lamp", "tender minus", "tender plus", 7);
    Solution solution = sketch.solve();
    assertThat(sketch.netVolts(solution, "bottom")).isZero();
    assertThat(sketch.netVolts(solution, "top")).isCloseTo(11.8, within(1e-12));
    assertThat(sketch.netVolts(solution, "tender minus")).isZero();
    assertThat(sketch.netVolts(solution, "tender plus")).isCloseTo(7, within(1e-12));
    assertThat(solution.amps("tender lamp")).isCloseTo(-1, within(1e-12));
  }

  /** The first source counts, even where a supply comes before it. */
  @Test
  void aSourceGoesBeforeASupply() throws NoSolution {
    Sketch sketch =
        new Sketch()
            .supply("charger", "jack", "sleeve", 1)
            .resistor("return", "sleeve", "minus", 0.5)
            .source("pack", "jack", "minus", 12, 0.5);
    Solution solution = sketch.solve();
    assertThat(sketch.netVolts(solution, "minus")).isZero();
    assertThat(sketch.netVolts(solution, "sleeve")).isCloseTo(-0.5, within(1e-12));
  }

  @Test
  void aSupplyAloneCountsFromItsMinus() throws NoSolution {
    Sketch sketch =
        new Sketch()
            .resistor("wire", "jack", "far", 1)
            .resistor("load", "far", "sleeve", 9)
            .supply("charger", "jack", "sleeve", 0.5);
    Solution solution = sketch.solve();
    assertThat(sketch.netVolts(solution, "sleeve")).isZero();
    assertThat(sketch.netVolts(solution, "jack")).isCloseTo(5, within(1e-12));
  }

  /** A regulator feeds a regulator, both with outputs of their own; the second comes first. */
  @Test
  void regulatorsFeedFurtherIslands() throws NoSolution {
    Sketch sketch =
        new Sketch()
            .regulator("second", "x", "x minus", "y", "y minus", 3.3, 0)
            .resistor("load", "y", "y minus", 3.25)
            .regulator("first", "plus", "minus", "x", "x minus", 5, 0)
            .source("pack", "plus", "minus", 12, 0.1);
    Solution solution = sketch.solve();
    assertThat(solution.amps("load")).isCloseTo(1, within(1e-12));
    assertThat(solution.amps("first")).isCloseTo(1, within(1e-12));
    assertThat(solution.volts("second")).isCloseTo(4.95, within(1e-12));
    assertThat(sketch.netVolts(solution, "x minus")).isZero();
  }

  @Test
  void aRegulatorWithADeadInputGivesNothing() throws NoSolution {
    Solution solution =
        new Sketch()
            .regulator("regulator", "in", "in minus", "out", "minus", 5, 0)
            .source("pack", "out", "minus", 6, 0.1)
            .resistor("load", "out", "minus", 5.9)
            .solve();
    assertThat(solution.amps("regulator")).isZero();
    assertThat(solution.volts("regulator")).isZero();
    assertThat(solution.amps("load")).isCloseTo(1, within(1e-7));
  }

  @Test
  void aLoadOnOneLeadOnlyDrawsNothing() throws NoSolution {
    Sketch sketch =
        new Sketch()
            .source("pack", "plus", "minus", 14.4, 0.1)
            .sink("radio", "plus", "loose", 0.5)
            .regulator("regulator", "plus", "out", "adrift", 5, 0.9)
            .sink("camera", "out", "adrift", 0.2)
            .drop("lamp", "plus", "dangling", 2, 10);
    Solution solution = sketch.solve();
    for (String idle : new String[] {"pack", "radio", "regulator", "camera", "lamp"}) {
      assertThat(solution.amps(idle)).as(idle).isCloseTo(0, within(1e-15));
    }
    assertThat(sketch.netVolts(solution, "loose")).isCloseTo(14.4, within(1e-12));
  }

  @Test
  void anEmptyNetworkHasAnEmptySolution() throws NoSolution {
    Solution solution = new Sketch().solve();
    assertThat(solution.netVolts()).isEmpty();
    assertThat(solution.elementAmps()).isEmpty();
  }
}
