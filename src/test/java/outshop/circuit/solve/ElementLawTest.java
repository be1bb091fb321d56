package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of every element that is not linear, on both sides of its bend and on it. */
final class ElementLawTest {
  private static final double STIFF_OHMS = 1e-9;

  @ParameterizedTest
  @CsvSource({"2.0, 0.0", "2.5, 0.05", "4.0, 0.2", "12, 1.0"})
  void dropConductsAboveItsVolts(double volts, double amps) throws NoSolution {
    Solution solution = at(volts).drop("lamp", "plus", "0", 2.0, 10).solve();
    assertThat(solution.amps("lamp")).isCloseTo(amps, within(4e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-20, -0.5, 1.9})
  void dropOnlyLeaksBelowItsVolts(double volts) throws NoSolution {
    Solution solution = at(volts).drop("lamp", "plus", "0", 2.0, 10).solve();
    assertThat(solution.amps("lamp")).isCloseTo(volts * 1e-9, within(1e-20));
  }

  /** A knee at 1 V: in proportion below, level above. */
  @ParameterizedTest
  @CsvSource({"0.25, 0.5", "0.5, 1.0", "0.999, 1.998", "1.0, 2.0", "1.001, 2.0", "14.4, 2.0"})
  void sinkDrawsItsCurrentAboveTheKnee(double volts, double amps) throws NoSolution {
    Solution solution = at(volts).sink("radio", "plus", "0", 2.0).solve();
    assertThat(solution.amps("radio")).isCloseTo(amps, within(1e-8));
  }

  @ParameterizedTest
  @CsvSource({"1.5, 0.75", "2.9, 1.45", "3.0, 1.5", "3.1, 1.451612903", "9.0, 0.5", "18.0, 0.25"})
  void powerSinkDrawsItsPowerAboveTheKnee(double volts, double amps) throws NoSolution {
    double watts = 4.5;
    Solution solution = at(volts).powerSink("sound", "plus", "0", watts, 3.0).solve();
    assertThat(solution.amps("sound")).isCloseTo(amps, within(1e-8));
  }

  @Test
  void loadsOnlyLeakWhenReversed() throws NoSolution {
    Solution solution =
        at(-12)
            .sink("radio", "plus", "0", 2.0)
            .powerSink("sound", "plus", "0", 4.5, 3.0)
            .regulator("regulator", "plus", "out", "0", 5, 0.9)
            .sink("camera", "out", "0", 0.2)
            .solve();
    assertThat(solution.amps("radio")).isCloseTo(-12e-9, within(1e-17));
    assertThat(solution.amps("sound")).isCloseTo(-12e-9, within(1e-17));
    assertThat(solution.amps("regulator")).isCloseTo(-12e-9, within(1e-17));
    assertThat(solution.amps("camera")).isCloseTo(0, within(1e-15));
  }

  /** Without a leak nothing would say how they share the voltage out. */
  @Test
  void reversedLoadsInSeriesShareTheVoltageOut() throws NoSolution {
    Solution solution =
        at(-12).sink("radio", "plus", "mid", 0.3).sink("sound", "mid", "0", 0.5).solve();
    assertThat(solution.volts("radio")).isCloseTo(-6, within(1e-6));
    assertThat(solution.volts("sound")).isCloseTo(-6, within(1e-6));
  }

  /** The smaller one sets the current, the larger one stays below its knee. */
  @Test
  void loadsInSeriesTakeTheSmallerCurrent() throws NoSolution {
    Solution solution =
        at(12).sink("large", "plus", "mid", 0.8).sink("small", "mid", "0", 0.2).solve();
    assertThat(solution.amps("large")).isCloseTo(0.2, within(1e-12));
    assertThat(solution.volts("large")).isCloseTo(0.25, within(1e-9));
    assertThat(solution.volts("small")).isCloseTo(11.75, within(1e-8));
  }

  /** Into 10 ohm: 5 V behind 0.05 ohm give 0.497512... A, whatever the input. */
  @ParameterizedTest
  @CsvSource({"5.0, 0", "7.2, 0", "14.4, 0"})
  void linearRegulatorDrawsWhatItGives(double volts, double efficiency) throws NoSolution {
    Solution solution = regulated(volts, efficiency);
    assertThat(solution.amps("load")).isCloseTo(5 / 10.05, within(1e-9));
    assertThat(solution.amps("regulator")).isCloseTo(5 / 10.05, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {5.0, 7.2, 14.4})
  void switchingRegulatorDrawsTheSamePower(double volts) throws NoSolution {
    Solution solution = regulated(volts, 0.8);
    double given = 5 / 10.05;
    assertThat(solution.amps("load")).isCloseTo(given, within(1e-9));
    assertThat(solution.amps("regulator")).isCloseTo(5 * given / (volts * 0.8), within(1e-8));
  }

  /** Below its volts a regulator holds what comes in. */
  @ParameterizedTest
  @CsvSource({"4.999, 0, 1", "3.0, 0, 1", "0.4, 0, 1", "4.999, 0.8, 1.25", "0.4, 0.8, 1.25"})
  void starvedRegulatorPassesItsInputOn(double volts, double efficiency, double share)
      throws NoSolution {
    Solution solution = regulated(volts, efficiency);
    assertThat(solution.amps("load")).isCloseTo(volts / 10.05, within(1e-8));
    assertThat(solution.amps("regulator")).isCloseTo(share * volts / 10.05, within(1e-8));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.8})
  void regulatorGivesNothingBackwards(double efficiency) throws NoSolution {
    Solution solution =
        at(9)
            .regulator("regulator", "plus", "out", "0", 5, efficiency)
            .source("stronger", "out", "0", 6, 0.5)
            .solve();
    assertThat(solution.amps("regulator")).isCloseTo(9e-9, within(1e-17));
    assertThat(solution.amps("stronger")).isCloseTo(-1e-9, within(1e-12));
    assertThat(solution.volts("stronger")).isCloseTo(6, within(1e-8));
  }

  @Test
  void regulatorMayHaveAnOutputOfItsOwn() throws NoSolution {
    Sketch sketch =
        at(12)
            .regulator("regulator", "plus", "0", "out", "back", 5, 0)
            .resistor("load", "out", "back", 9.95);
    Solution solution = sketch.solve();
    assertThat(solution.amps("regulator")).isCloseTo(0.5, within(1e-12));
    assertThat(sketch.netVolts(solution, "back")).isZero();
    assertThat(sketch.netVolts(solution, "out")).isCloseTo(4.975, within(1e-12));
  }

  @Test
  void supplyPushesItsCurrentWhateverTheVoltage() throws NoSolution {
    Solution solution =
        new Sketch()
            .supply("charger", "plus", "0", 1.5)
            .resistor("wire", "plus", "pack", 0.1)
            .source("pack", "pack", "0", 14.4, 0.2)
            .solve();
    assertThat(solution.volts("charger")).isCloseTo(14.4 + 1.5 * 0.3, within(1e-12));
    assertThat(solution.amps("charger")).isEqualTo(-1.5);
    assertThat(solution.amps("pack")).isCloseTo(1.5, within(1e-12));
  }

  private static Sketch at(double volts) {
    return new Sketch().source("bench", "plus", "0", volts, STIFF_OHMS);
  }

  private static Solution regulated(double volts, double efficiency) throws NoSolution {
    return at(volts)
        .regulator("regulator", "plus", "out", "0", 5, efficiency)
        .resistor("load", "out", "0", 10)
        .solve();
  }
}
