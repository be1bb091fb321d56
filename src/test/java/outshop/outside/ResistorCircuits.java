package outshop.outside;

import static outshop.circuit.solve.Sketch.NO_OHMS;

import java.util.List;
import outshop.circuit.solve.Sketch;

/** Textbook circuits of resistors in series and parallel. */
final class ResistorCircuits {
  private static final String COMBINED = Sources.COLLEGE + "section 21.1, module m42356, ";
  private static final String DIVIDERS = Sources.LESSONS + "ch. 6, Divider Circuits";

  private final CheckList list = new CheckList("textbook circuits: resistors");

  private ResistorCircuits() {}

  static List<OutsideCheck> all() {
    ResistorCircuits circuits = new ResistorCircuits();
    circuits.series();
    circuits.parallel();
    circuits.wireBeforeTwoLoads();
    circuits.seriesParallel();
    circuits.dividers();
    return circuits.list.all();
  }

  private void series() {
    Solved solved =
        new Solved(
            battery(12.0)
                .resistor("1", "plus", "x", 1.00)
                .resistor("2", "x", "y", 6.00)
                .resistor("3", "y", "0", 13.0));
    list.from(COMBINED + "example: 1.00, 6.00, 13.0 ohm in series on 12.0 V")
        .printed("series-ohms", "resistance", "20.0", "ohm", solved.ohmsAt("battery"))
        .printed("series-amps", "current", "0.600", "A", solved.amps("1"))
        .printed("series-1-volts", "at the first", "0.600", "V", solved.volts("1"))
        .printed("series-2-volts", "at the second", "3.60", "V", solved.volts("2"))
        .printed("series-3-volts", "at the third", "7.80", "V", solved.volts("3"))
        .printed("series-watts", "power", "7.20", "W", solved.wattsFrom("battery"));
  }

  private void parallel() {
    Solved solved =
        new Solved(
            battery(12.0)
                .resistor("1", "plus", "0", 1.00)
                .resistor("2", "plus", "0", 6.00)
                .resistor("3", "plus", "0", 13.0));
    list.from(COMBINED + "example: the same in parallel")
        .printed("parallel-ohms", "resistance", "0.8041", "ohm", solved.ohmsAt("battery"))
        .printed("parallel-amps", "current", "14.92", "A", solved.ampsFrom("battery"))
        .printed("parallel-1-amps", "in the first", "12.0", "A", solved.amps("1"))
        .printed("parallel-2-amps", "in the second", "2.00", "A", solved.amps("2"))
        .printed("parallel-3-amps", "in the third", "0.92", "A", solved.amps("3"))
        .printed("parallel-watts", "power", "179", "W", solved.wattsFrom("battery"));
  }

  private void wireBeforeTwoLoads() {
    Solved solved =
        new Solved(
            battery(12.0)
                .resistor("wire", "plus", "far", 1.00)
                .resistor("2", "far", "0", 6.00)
                .resistor("3", "far", "0", 13.0));
    list.from(COMBINED + "example: 1.00 ohm of wire before 6.00 and 13.0 ohm on 12.0 V")
        .printed("wire-ohms", "resistance", "5.11", "ohm", solved.ohmsAt("battery"))
        .printed("wire-amps", "current", "2.35", "A", solved.amps("wire"))
        .printed("wire-volts", "lost in the wire", "2.35", "V", solved.volts("wire"))
        .printed("wire-load-volts", "left for the loads", "9.65", "V", solved.volts("2"))
        .printed("wire-2-amps", "in the second", "1.61", "A", solved.amps("2"))
        .printed("wire-2-watts", "power of the second", "15.5", "W", solved.watts("2"));
  }

  private void seriesParallel() {
    Solved solved =
        new Solved(
            battery(24)
                .resistor("R1", "plus", "mid", 100)
                .resistor("R2", "plus", "mid", 250)
                .resistor("R3", "mid", "0", 350)
                .resistor("R4", "mid", "0", 200));
    list.from(
            Sources.LESSONS
                + "ch. 7, Series-Parallel Combination Circuits: 100 // 250 before 350 // 200 ohm"
                + " on 24 V")
        .printed("mixed-ohms", "resistance", "198.70", "ohm", solved.ohmsAt("battery"))
        .printed(
            "mixed-amps",
            "current",
            "120.78",
            "mA",
            () -> 1000 * solved.ampsFrom("battery").getAsDouble())
        .printed("mixed-1-amps", "in R1", "86.27", "mA", solved.milliamps("R1"))
        .printed("mixed-2-amps", "in R2", "34.51", "mA", solved.milliamps("R2"))
        .printed("mixed-3-amps", "in R3", "43.92", "mA", solved.milliamps("R3"))
        .printed("mixed-4-amps", "in R4", "76.86", "mA", solved.milliamps("R4"))
        .printed("mixed-1-volts", "at R1", "8.627", "V", solved.volts("R1"))
        .printed("mixed-3-volts", "at R3", "15.373", "V", solved.volts("R3"));
  }

  private void dividers() {
    Solved volts =
        new Solved(
            battery(45)
                .resistor("R1", "plus", "x", 5_000)
                .resistor("R2", "x", "y", 10_000)
                .resistor("R3", "y", "0", 7_500));
    list.from(DIVIDERS + ": 5, 10, 7.5 kohm on 45 V (resistances inferred from its results)")
        .whole("divider-amps", "current", "2", "mA", volts.milliamps("R1"))
        .whole("divider-1-volts", "at R1", "10", "V", volts.volts("R1"))
        .whole("divider-2-volts", "at R2", "20", "V", volts.volts("R2"))
        .whole("divider-3-volts", "at R3", "15", "V", volts.volts("R3"));
    Solved amps =
        new Solved(
            battery(6)
                .resistor("R1", "plus", "0", 1_000)
                .resistor("R2", "plus", "0", 3_000)
                .resistor("R3", "plus", "0", 2_000));
    list.from(DIVIDERS + ": 1, 3, 2 kohm side by side on 6 V (resistances inferred from results)")
        .whole("shared-1-amps", "in R1", "6", "mA", amps.milliamps("R1"))
        .whole("shared-2-amps", "in R2", "2", "mA", amps.milliamps("R2"))
        .whole("shared-3-amps", "in R3", "3", "mA", amps.milliamps("R3"))
        .whole(
            "shared-amps",
            "together",
            "11",
            "mA",
            () -> 1000 * amps.ampsFrom("battery").getAsDouble());
  }

  private static Sketch battery(double volts) {
    return new Sketch().source("battery", "plus", "0", volts, NO_OHMS);
  }
}
