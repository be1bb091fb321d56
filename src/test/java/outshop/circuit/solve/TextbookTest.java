package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static outshop.circuit.solve.Printed.assertPrinted;
import static outshop.circuit.solve.Sketch.NO_OHMS;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked examples and answered problems of published textbooks, to the digits they print.
 *
 * <p>CP: OpenStax, College Physics 2e. UP: OpenStax, University Physics volume 2. LEC: T. R.
 * Kuphaldt, Lessons in Electric Circuits, volume I (DC), 5th edition. Where the book prints no
 * answer, the test says that the expected figure was worked out here.
 */
final class TextbookTest {
  /** CP section 21.2, example on terminal voltage and load, (a) to (d). */
  @ParameterizedTest(name = "r {0}, load {1}")
  @CsvSource({"0.100, 10.0, 1.188, 11.9", "0.100, 0.500, 20.0, 10.0", "0.500, 0.500, 12.0, 6.00"})
  void batteryUnderLoad(double ohms, double load, String amps, String volts) throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "minus", 12.0, ohms)
            .resistor("load", "plus", "minus", load)
            .solve();
    assertPrinted("current", solution.amps("load"), amps);
    assertPrinted("terminal voltage", solution.volts("battery"), volts);
    assertPrinted("battery current", -solution.amps("battery"), amps);
  }

  /** CP section 21.2, the same example: power in the 0.500 ohm load, (c) and (d). */
  @ParameterizedTest
  @CsvSource({"0.100, 2.00E2", "0.500, 72.0"})
  void powerInTheLoad(double ohms, String watts) throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "minus", 12.0, ohms)
            .resistor("load", "plus", "minus", 0.500)
            .solve();
    assertPrinted("power", solution.watts("load"), watts);
  }

  /** LEC chapter 11, Batteries and Power Systems: 10 V behind 0.2 ohm into 1 ohm, and shorted. */
  @Test
  void loadedAndShortedBattery() throws NoSolution {
    Sketch battery = new Sketch().source("battery", "plus", "minus", 10, 0.2);
    assertPrinted(
        "loaded", battery.resistor("load", "plus", "minus", 1).solve().amps("load"), "8.333");
    Solution shorted = new Sketch().source("battery", "net", "net", 10, 0.2).solve();
    assertPrinted("shorted", -shorted.amps("battery"), "50");
  }

  /** LEC chapter 11, Batteries and Power Systems: what a 100 ohm load tells of a battery. */
  @ParameterizedTest
  @CsvSource({"13.2, 0.1, 13.187", "13.0, 5, 12.381", "11.5, 20, 9.583", "7.5, 50, 5"})
  void loadTest(double emf, double ohms, String volts) throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "minus", emf, ohms)
            .resistor("load", "plus", "minus", 100)
            .solve();
    assertPrinted("voltage under load", solution.volts("load"), volts);
  }

  /** CP section 21.2, problem: 5.00 A more drop the terminals by 2.00 V, so r is 0.400 ohm. */
  @Test
  void internalResistanceFromTheDrop() throws NoSolution {
    double atOneAmp = terminalVolts(1.00, 0.400);
    double atSixAmps = terminalVolts(6.00, 0.400);
    assertPrinted("drop", atOneAmp - atSixAmps, "2.00");
  }

  private static double terminalVolts(double amps, double ohms) throws NoSolution {
    return new Sketch()
        .source("battery", "plus", "minus", 12.0, ohms)
        .sink("load", "plus", "minus", amps)
        .solve()
        .volts("battery");
  }

  /** CP section 21.2, problem: charged with 8.00 A a 12.0 V battery shows 15.0 V: 0.375 ohm. */
  @Test
  void batteryOnTheCharger() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "minus", 12.0, 0.375)
            .supply("charger", "plus", "minus", 8.00)
            .solve();
    assertPrinted("terminal voltage", solution.volts("battery"), "15.0");
    assertPrinted("charging current", solution.amps("battery"), "8.00");
    assertPrinted("charger", solution.amps("charger"), "-8.00");
  }

  /**
   * CP section 21.2, problem on unreasonable results: 8.50 A out of a 1.58 V cell of 0.200 ohm
   * would take -0.120 V. Pulled by force the figure is the book's; a load gets less than it asks
   * for.
   */
  @Test
  void moreThanTheCellCanGive() throws NoSolution {
    Sketch cell = new Sketch().source("cell", "plus", "minus", 1.58, 0.200);
    Solution loaded = cell.sink("load", "plus", "minus", 8.50).solve();
    assertThat(loaded.volts("load")).isPositive().isLessThan(Element.Sink.KNEE_VOLTS);
    assertThat(loaded.amps("load")).isLessThan(8.50 * 0.9);
    Solution forced =
        new Sketch()
            .source("cell", "plus", "minus", 1.58, 0.200)
            .supply("force", "minus", "plus", 8.50)
            .solve();
    assertPrinted("terminal voltage", forced.volts("cell"), "-0.120");
  }

  /** LEC chapter 10, DC Network Analysis: 28 V by 4 ohm and 7 V by 1 ohm feed 2 ohm. */
  @Test
  void twoSourcesOneLoad() throws NoSolution {
    Solution solution = twoSources().resistor("load", "top", "0", 2).solve();
    assertPrinted("load voltage", solution.volts("load"), "8");
    assertPrinted("load current", solution.amps("load"), "4");
    assertPrinted("by the 28 V source", -solution.amps("28 V"), "5");
    assertPrinted("into the 7 V source", solution.amps("7 V"), "1");
  }

  /** LEC chapter 10, DC Network Analysis: the equivalents of the same circuit. */
  @Test
  void equivalentsOfTwoSources() throws NoSolution {
    double openVolts = twoSources().solve().volts("28 V");
    double shortAmps = twoSources().resistor("short", "top", "0", NO_OHMS).solve().amps("short");
    assertPrinted("open voltage", openVolts, "11.2");
    assertPrinted("short current", shortAmps, "14");
    assertPrinted("resistance", openVolts / shortAmps, "0.8");
    Solution matched = twoSources().resistor("load", "top", "0", 0.8).solve();
    assertPrinted("most power", matched.watts("load"), "39.2");
  }

  private static Sketch twoSources() {
    return new Sketch().source("28 V", "top", "0", 28, 4).source("7 V", "top", "0", 7, 1);
  }

  /** CP section 21.1, example on series resistors: 1.00, 6.00 and 13.0 ohm on 12.0 V. */
  @Test
  void seriesCircuit() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "0", 12.0, NO_OHMS)
            .resistor("1", "plus", "x", 1.00)
            .resistor("2", "x", "y", 6.00)
            .resistor("3", "y", "0", 13.0)
            .solve();
    assertPrinted("resistance", 12.0 / solution.amps("1"), "20.0");
    assertPrinted("current", solution.amps("1"), "0.600");
    assertPrinted("first", solution.volts("1"), "0.600");
    assertPrinted("second", solution.volts("2"), "3.60");
    assertPrinted("third", solution.volts("3"), "7.80");
    assertPrinted("power", -solution.watts("battery"), "7.20");
  }

  /** CP section 21.1, example on parallel resistors: the same three across 12.0 V. */
  @Test
  void parallelCircuit() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "0", 12.0, NO_OHMS)
            .resistor("1", "plus", "0", 1.00)
            .resistor("2", "plus", "0", 6.00)
            .resistor("3", "plus", "0", 13.0)
            .solve();
    assertPrinted("resistance", 12.0 / -solution.amps("battery"), "0.8041");
    assertPrinted("current", -solution.amps("battery"), "14.92");
    assertPrinted("first", solution.amps("1"), "12.0");
    assertPrinted("second", solution.amps("2"), "2.00");
    assertPrinted("third", solution.amps("3"), "0.92");
    assertPrinted("power", -solution.watts("battery"), "179");
  }

  /** CP section 21.1, example on combined resistors: 1.00 ohm of wire before 6.00 and 13.0 ohm. */
  @Test
  void wireBeforeTwoLoads() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "0", 12.0, NO_OHMS)
            .resistor("wire", "plus", "far", 1.00)
            .resistor("2", "far", "0", 6.00)
            .resistor("3", "far", "0", 13.0)
            .solve();
    assertPrinted("resistance", 12.0 / solution.amps("wire"), "5.11");
    assertPrinted("current", solution.amps("wire"), "2.35");
    assertPrinted("drop in the wire", solution.volts("wire"), "2.35");
    assertPrinted("left for the loads", solution.volts("2"), "9.65");
    assertPrinted("second", solution.amps("2"), "1.61");
    assertPrinted("power of the second", solution.watts("2"), "15.5");
  }

  /** LEC chapter 7, Series-Parallel Combination Circuits: 100 // 250 before 350 // 200, 24 V. */
  @Test
  void seriesParallel() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "0", 24, NO_OHMS)
            .resistor("R1", "plus", "mid", 100)
            .resistor("R2", "plus", "mid", 250)
            .resistor("R3", "mid", "0", 350)
            .resistor("R4", "mid", "0", 200)
            .solve();
    assertPrinted("total, mA", -1000 * solution.amps("battery"), "120.78");
    assertPrinted("resistance", 24 / -solution.amps("battery"), "198.70");
    assertPrinted("R1, mA", 1000 * solution.amps("R1"), "86.27");
    assertPrinted("R2, mA", 1000 * solution.amps("R2"), "34.51");
    assertPrinted("R3, mA", 1000 * solution.amps("R3"), "43.92");
    assertPrinted("R4, mA", 1000 * solution.amps("R4"), "76.86");
    assertPrinted("R1", solution.volts("R1"), "8.627");
    assertPrinted("R3", solution.volts("R3"), "15.373");
  }

  /**
   * LEC chapter 12, Physics of Conductors and Insulators: 15 ohm wires to 250 ohm, 20 C and 35 C.
   */
  @ParameterizedTest
  @CsvSource({"15, 50, 12.5, 0.75", "15.909, 49.677, 12.42, 0.79"})
  void wiresToALoad(double wire, String milliamps, String load, String each) throws NoSolution {
    Solution solution =
        new Sketch()
            .source("battery", "plus", "0", 14, NO_OHMS)
            .resistor("there", "plus", "a", wire)
            .resistor("load", "a", "b", 250)
            .resistor("back", "b", "0", wire)
            .solve();
    assertPrinted("current, mA", 1000 * solution.amps("load"), milliamps);
    assertPrinted("load", solution.volts("load"), load);
    assertPrinted("there", solution.volts("there"), each);
    assertPrinted("back", solution.volts("back"), each);
  }

  /** LEC chapter 2, Ohm's Law: a 3 ohm lamp at 18 V and at 36 V. */
  @ParameterizedTest
  @CsvSource({"18, 6, 108", "36, 12, 432"})
  void lampAtTwiceTheVoltage(double volts, String amps, String watts) throws NoSolution {
    Solution solution = lamp(volts, 3);
    assertPrinted("current", solution.amps("lamp"), amps);
    assertPrinted("power", solution.watts("lamp"), watts);
  }

  /** CP section 20.4, example on a headlight: 2.50 A hot; 0.350 ohm cold, as it is switched on. */
  @Test
  void headlightHotAndCold() throws NoSolution {
    Solution hot =
        new Sketch()
            .source("battery", "plus", "0", 12.0, NO_OHMS)
            .sink("lamp", "plus", "0", 2.50)
            .solve();
    assertPrinted("hot", hot.watts("lamp"), "30.0");
    Solution cold = lamp(12.0, 0.350);
    assertPrinted("cold", cold.watts("lamp"), "411");
    assertPrinted("inrush", cold.amps("lamp"), "34.3");
  }

  private static Solution lamp(double volts, double ohms) throws NoSolution {
    return new Sketch()
        .source("battery", "plus", "0", volts, NO_OHMS)
        .resistor("lamp", "plus", "0", ohms)
        .solve();
  }

  /** CP section 20.4, problem: 5.00 A through a cord of 0.0600 and a cheaper one of 0.300 ohm. */
  @ParameterizedTest
  @CsvSource({"0.0600, 1.50", "0.300, 7.50"})
  void lossInACord(double ohms, String watts) throws NoSolution {
    Solution solution =
        new Sketch()
            .source("outlet", "plus", "0", 120, NO_OHMS)
            .resistor("cord", "plus", "end", ohms)
            .sink("appliance", "end", "0", 5.00)
            .solve();
    assertPrinted("loss", solution.watts("cord"), watts);
  }

  /** CP section 23.6 and UP section 13.6: 48.0 V on coils of 0.400 ohm, back emf 0 and 40.0 V. */
  @ParameterizedTest
  @CsvSource({"0, 120, 5.76E3", "40.0, 20, 160"})
  void motorCoils(double backEmf, String amps, String watts) throws NoSolution {
    Solution solution = motor(48.0, NO_OHMS, 0.400, backEmf);
    assertPrinted("current", solution.amps("coils"), amps);
    assertPrinted("heat in the coils", solution.watts("coils"), watts);
  }

  /**
   * CP section 23.6, problem: a 120 V motor takes 10.0 A at the start, so its coils are 12.00 ohm.
   */
  @Test
  void motorAtTheStartAndRunning() throws NoSolution {
    assertPrinted("start", motor(120, NO_OHMS, 12.00, 0).amps("coils"), "10.0");
    assertPrinted("running", motor(120, NO_OHMS, 12.00, 100).amps("coils"), "1.67");
  }

  /** CP section 23.6, problem: 20.0 A at the start of 120 V; back emf 72.0 V leaves 8.00 A. */
  @Test
  void backEmfFromTwoCurrents() throws NoSolution {
    double coils = 120 / 20.0;
    assertPrinted("start", motor(120, NO_OHMS, coils, 0).amps("coils"), "20.0");
    assertPrinted("running", motor(120, NO_OHMS, coils, 72.0).amps("coils"), "8.00");
  }

  /**
   * CP section 23.6, problem: 6.00 V toy motor, back emf 4.50 V at 3.00 A. The book prints no
   * answer; 0.500 ohm and 12.0 A were worked out here.
   */
  @Test
  void toyMotor() throws NoSolution {
    assertPrinted("running", motor(6.00, NO_OHMS, 0.500, 4.50).amps("coils"), "3.00");
    assertPrinted("start", motor(6.00, NO_OHMS, 0.500, 0).amps("coils"), "12.0");
  }

  /** CP section 23.6, problem: the same on four cells of 0.100 ohm each: coils of 0.100 ohm. */
  @Test
  void toyMotorOnFourCells() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("cell 1", "1", "0", 1.5, 0.100)
            .source("cell 2", "2", "1", 1.5, 0.100)
            .source("cell 3", "3", "2", 1.5, 0.100)
            .source("cell 4", "4", "3", 1.5, 0.100)
            .resistor("coils", "4", "turning", 0.100)
            .source("back emf", "turning", "0", 4.50, NO_OHMS)
            .solve();
    assertPrinted("current", solution.amps("coils"), "3.00");
  }

  /** UP section 13.6, example: series-wound motor of 2.0 ohm on 120 V at 10 A and at 20 A. */
  @ParameterizedTest
  @CsvSource({"100, 10, 1.0E3, 2.0E2, 1.2E3", "80, 20, 1.6E3, 8.0E2, 2.4E3"})
  void seriesWoundMotor(double backEmf, String amps, String shaft, String copper, String input)
      throws NoSolution {
    Solution solution = motor(120, NO_OHMS, 2.0, backEmf);
    assertPrinted("current", solution.amps("coils"), amps);
    assertPrinted("mechanical power", solution.watts("back emf"), shaft);
    assertPrinted("heat in the coils", solution.watts("coils"), copper);
    assertPrinted("input", -solution.watts("battery"), input);
  }

  /** CP section 21.2, problem: starter of 0.0500 ohm, then with 0.0900 ohm of bad contact. */
  @Test
  void starterAndBadContact() throws NoSolution {
    Solution good = motor(12.0, 0.0100, 0.0500, 0);
    assertPrinted("current", good.amps("coils"), "200");
    assertPrinted("voltage", good.volts("coils"), "10.0");
    assertPrinted("power", good.watts("coils"), "2.00E3");
    Solution bad =
        new Sketch()
            .source("battery", "plus", "0", 12.0, 0.0100)
            .resistor("contact", "plus", "starter", 0.0900)
            .resistor("coils", "starter", "0", 0.0500)
            .solve();
    assertPrinted("current", bad.amps("coils"), "80.0");
    assertPrinted("voltage", bad.volts("coils"), "4.0");
    assertPrinted("power", bad.watts("coils"), "320");
  }

  /** CP section 21.2, problem: flashlight bulb of 2.30 ohm on a 1.58 V cell of 0.100 ohm. */
  @Test
  void flashlight() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("cell", "plus", "0", 1.58, 0.100)
            .resistor("bulb", "plus", "0", 2.30)
            .solve();
    assertPrinted("current", solution.amps("bulb"), "0.658");
    assertPrinted("power", solution.watts("bulb"), "0.997");
  }

  /**
   * CP section 21.2, problem: three good cells and a weak one in series into 10.0 ohm. The book
   * prints no answer; 0.617 A was worked out here (6.27 V over 10.16 ohm).
   */
  @Test
  void weakCellInSeries() throws NoSolution {
    Solution solution =
        new Sketch()
            .source("cell 1", "1", "0", 1.58, 0.0200)
            .source("cell 2", "2", "1", 1.58, 0.0200)
            .source("cell 3", "3", "2", 1.58, 0.0200)
            .source("weak cell", "4", "3", 1.53, 0.100)
            .resistor("radio", "4", "0", 10.0)
            .solve();
    assertPrinted("current", solution.amps("radio"), "0.617");
  }

  private static Solution motor(double volts, double ohms, double coils, double backEmf)
      throws NoSolution {
    return new Sketch()
        .source("battery", "plus", "0", volts, ohms)
        .resistor("coils", "plus", "turning", coils)
        .source("back emf", "turning", "0", backEmf, NO_OHMS)
        .solve();
  }
}
