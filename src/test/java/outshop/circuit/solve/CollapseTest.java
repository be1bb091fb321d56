package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;

/** More asked than there is: packs that collapse, and currents with nowhere to go. */
final class CollapseTest {
  /** 20 A asked of 12 V behind 1 ohm: 12 / (1 + 1/20) A flow, at 12/21 V. */
  @Test
  void aSinkThatAsksTooMuch() throws NoSolution {
    Solution solution =
        new Sketch().source("pack", "plus", "0", 12, 1).sink("load", "plus", "0", 20).solve();
    assertThat(solution.volts("load")).isCloseTo(12.0 / 21, within(1e-12));
    assertThat(solution.amps("load")).isCloseTo(240.0 / 21, within(1e-11));
  }

  /** At most 36 W come out of 12 V behind 1 ohm; 40 W end below the knee, V = 12/(1 + 40/9). */
  @Test
  void aPowerSinkThatAsksTooMuch() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("pack", "plus", "0", 12, 1)
            .powerSink("load", "plus", "0", 40, 3)
            .solve();
    assertThat(solution.volts("load")).isCloseTo(12 / (1 + 40.0 / 9), within(1e-11));
  }

  /** 20 W at 10 V and 2 A, not at 2 V and 10 A, though both fit: the knee is below both. */
  @Test
  void ofTwoFitsTheHigherVoltage() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("pack", "plus", "0", 12, 1)
            .powerSink("load", "plus", "0", 20, 0.5)
            .solve();
    assertThat(solution.volts("load")).isCloseTo(10, within(1e-11));
  }

  /** Exactly the most there is: 36 W, at half the voltage. */
  @Test
  void theMostThatComesOut() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("pack", "plus", "0", 12, 1)
            .powerSink("load", "plus", "0", 36 * (1 - 1e-9), 1)
            .solve();
    assertThat(solution.volts("load")).isCloseTo(6, within(1e-3));
    assertThat(solution.watts("load")).isCloseTo(36, within(1e-7));
  }

  /** 333 ohm before a regulator whose load wants more than ever comes through them. */
  @Test
  void aRegulatorThatCannotBeFed() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("pack", "plus", "0", 14.4, 0.1)
            .resistor("bulb", "plus", "in", 333)
            .regulator("regulator", "in", "out", "0", 6, 0)
            .powerSink("busy", "out", "0", 4, 1)
            .solve();
    double ohms = 0.1 + 333 + 0.05 + 1.0 / 4;
    assertThat(solution.amps("busy")).isCloseTo(14.4 / ohms, within(1e-10));
    assertThat(solution.amps("regulator")).isCloseTo(14.4 / ohms, within(1e-10));
  }

  @Test
  void aSupplyIntoNothingHasNoSolution() {
    Sketch open =
        new Sketch()
            .supply("charger", "jack", "sleeve", 1)
            .resistor("wire", "jack", "end", 0.1)
            .source("pack", "plus", "minus", 12, 0.1);
    assertThatThrownBy(open::solve)
        .isInstanceOf(NoSolution.class)
        .hasMessage("the current of a supply has no way back: charger")
        .extracting(thrown -> ((NoSolution) thrown).elements(), InstanceOfAssertFactories.LIST)
        .containsExactly("charger");
  }

  @Test
  void aSupplyStrongerThanItsLoadHasNoSolution() {
    Sketch charger =
        new Sketch().supply("charger", "jack", "sleeve", 2).sink("radio", "jack", "sleeve", 1);
    assertThatThrownBy(charger::solve)
        .isInstanceOf(NoSolution.class)
        .hasMessage("the currents of these do not come to a balance: charger, radio")
        .extracting(thrown -> ((NoSolution) thrown).elements(), InstanceOfAssertFactories.LIST)
        .containsExactly("charger", "radio");
  }

  @Test
  void aSupplyAgainstADiodeHasNoSolution() {
    Sketch charger =
        new Sketch().supply("charger", "jack", "sleeve", 2).drop("diode", "sleeve", "jack", 0.7, 1);
    assertThatThrownBy(charger::solve)
        .isInstanceOf(NoSolution.class)
        .hasMessageContaining("no bound")
        .extracting(thrown -> ((NoSolution) thrown).elements(), InstanceOfAssertFactories.LIST)
        .containsExactly("charger", "diode");
  }

  /** 0.5 A into a load of 1 A: it stays at half its knee. */
  @Test
  void aSupplyWeakerThanItsLoad() throws NoSolution {
    Solution solution =
        new Sketch()
            .supply("charger", "jack", "sleeve", 0.5)
            .sink("radio", "jack", "sleeve", 1)
            .solve();
    assertThat(solution.volts("radio")).isCloseTo(0.5, within(1e-12));
  }
}
