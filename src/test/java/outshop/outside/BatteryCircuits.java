package outshop.outside;

import java.util.List;
import java.util.function.DoubleSupplier;
import outshop.circuit.solve.Sketch;

/** Textbook circuits of batteries: under load, shorted, charged, in series and side by side. */
final class BatteryCircuits {
  private static final String TERMINALS = Sources.COLLEGE + "section 21.2, module m42357, ";
  private static final String BATTERIES = Sources.LESSONS + "ch. 11, Batteries and Power Systems";
  private static final String NETWORKS = Sources.LESSONS + "ch. 10, DC Network Analysis";

  private final CheckList list = new CheckList("textbook circuits: batteries");

  private BatteryCircuits() {}

  static List<OutsideCheck> all() {
    BatteryCircuits circuits = new BatteryCircuits();
    circuits.underLoad();
    circuits.loadTests();
    circuits.internalResistance();
    circuits.twoSources();
    circuits.starter();
    circuits.smallCells();
    return circuits.list.all();
  }

  private void underLoad() {
    list.from(TERMINALS + "example, terminal voltage and load");
    Solved light = loaded(12.0, 0.100, 10.0);
    amps("light", "12.0 V, 0.100 ohm, load 10.0 ohm", "1.188", light);
    volts("light", "12.0 V, 0.100 ohm, load 10.0 ohm", "11.9", light);
    Solved heavy = loaded(12.0, 0.100, 0.500);
    amps("heavy", "12.0 V, 0.100 ohm, load 0.500 ohm", "20.0", heavy);
    volts("heavy", "12.0 V, 0.100 ohm, load 0.500 ohm", "10.0", heavy);
    watts("heavy", "12.0 V, 0.100 ohm, load 0.500 ohm", "2.00E2", heavy);
    Solved tired = loaded(12.0, 0.500, 0.500);
    amps("tired", "12.0 V, 0.500 ohm, load 0.500 ohm", "12.0", tired);
    volts("tired", "12.0 V, 0.500 ohm, load 0.500 ohm", "6.00", tired);
    watts("tired", "12.0 V, 0.500 ohm, load 0.500 ohm", "72.0", tired);
  }

  private void loadTests() {
    list.from(BATTERIES);
    amps("ten-volts", "10 V, 0.2 ohm, load 1 ohm", "8.333", loaded(10, 0.2, 1));
    Solved shorted = new Solved(new Sketch().source("battery", "net", "net", 10, 0.2));
    list.whole("shorted", "10 V, 0.2 ohm, shorted", "50", "A", shorted.ampsFrom("battery"));
    volts("test-good", "13.2 V, 0.1 ohm, load 100 ohm", "13.187", loaded(13.2, 0.1, 100));
    volts("test-fair", "13.0 V, 5 ohm, load 100 ohm", "12.381", loaded(13.0, 5, 100));
    volts("test-weak", "11.5 V, 20 ohm, load 100 ohm", "9.583", loaded(11.5, 20, 100));
    volts("test-dead", "7.5 V, 50 ohm, load 100 ohm", "5", loaded(7.5, 50, 100));
  }

  private void internalResistance() {
    DoubleSupplier atOneAmp = drawn(1.00);
    DoubleSupplier atSixAmps = drawn(6.00);
    Solved charged = new Solved(battery(12.0, 0.375).supply("charger", "plus", "minus", 8.00));
    Solved forced =
        new Solved(
            new Sketch()
                .source("battery", "plus", "minus", 1.58, 0.200)
                .supply("force", "minus", "plus", 8.50));
    list.from(TERMINALS + "problems")
        .printed(
            "drop",
            "drop of 0.400 ohm for 5.00 A more",
            "2.00",
            "V",
            () -> atOneAmp.getAsDouble() - atSixAmps.getAsDouble())
        .printed(
            "charged",
            "12.0 V, 0.375 ohm, charged with 8.00 A",
            "15.0",
            "V",
            charged.volts("battery"))
        .printed(
            "unreasonable",
            "1.58 V, 0.200 ohm, 8.50 A drawn by force",
            "-0.120",
            "V",
            forced.volts("battery"));
  }

  private static DoubleSupplier drawn(double amps) {
    return new Solved(battery(12.0, 0.400).sink("load", "plus", "minus", amps)).volts("battery");
  }

  private void twoSources() {
    Solved loaded = new Solved(sources().resistor("load", "top", "0", 2));
    DoubleSupplier open = new Solved(sources()).volts("28 V");
    DoubleSupplier shorted =
        new Solved(sources().resistor("short", "top", "0", Sketch.NO_OHMS)).amps("short");
    list.from(NETWORKS + ": 28 V behind 4 ohm and 7 V behind 1 ohm")
        .whole("two-sources-volts", "load 2 ohm", "8", "V", loaded.volts("load"))
        .whole("two-sources-amps", "load 2 ohm", "4", "A", loaded.amps("load"))
        .whole("two-sources-28", "by the 28 V source", "5", "A", loaded.ampsFrom("28 V"))
        .whole("two-sources-7", "into the 7 V source", "1", "A", loaded.amps("7 V"))
        .printed("thevenin-volts", "without load", "11.2", "V", open)
        .whole("norton-amps", "shorted", "14", "A", shorted)
        .printed(
            "thevenin-ohms",
            "resistance of the equivalent",
            "0.8",
            "ohm",
            () -> open.getAsDouble() / shorted.getAsDouble())
        .printed(
            "matched-watts",
            "most power, load 0.8 ohm",
            "39.2",
            "W",
            new Solved(sources().resistor("load", "top", "0", 0.8)).watts("load"));
  }

  private static Sketch sources() {
    return new Sketch().source("28 V", "top", "0", 28, 4).source("7 V", "top", "0", 7, 1);
  }

  private void starter() {
    list.from(TERMINALS + "problem on a starter");
    Solved good = loaded(12.0, 0.0100, 0.0500);
    amps("starter", "12.0 V, 0.0100 ohm, starter 0.0500 ohm", "200", good);
    volts("starter", "12.0 V, 0.0100 ohm, starter 0.0500 ohm", "10.0", good);
    watts("starter", "12.0 V, 0.0100 ohm, starter 0.0500 ohm", "2.00E3", good);
    Solved bad =
        new Solved(
            battery(12.0, 0.0100)
                .resistor("contact", "plus", "far", 0.0900)
                .resistor("load", "far", "minus", 0.0500));
    amps("bad-contact", "the same with 0.0900 ohm of bad contact", "80.0", bad);
    volts("bad-contact", "the same with 0.0900 ohm of bad contact", "4.0", bad);
    watts("bad-contact", "the same with 0.0900 ohm of bad contact", "320", bad);
  }

  private void smallCells() {
    list.from(TERMINALS + "problem on a flashlight");
    Solved flashlight = loaded(1.58, 0.100, 2.30);
    amps("flashlight", "1.58 V, 0.100 ohm, bulb 2.30 ohm", "0.658", flashlight);
    watts("flashlight", "1.58 V, 0.100 ohm, bulb 2.30 ohm", "0.997", flashlight);
    list.from(TERMINALS + "problem on a weak cell; answer worked out (6.27 V over 10.16 ohm)");
    Solved weak =
        new Solved(
            new Sketch()
                .source("cell 1", "1", "minus", 1.58, 0.0200)
                .source("cell 2", "2", "1", 1.58, 0.0200)
                .source("cell 3", "3", "2", 1.58, 0.0200)
                .source("weak cell", "plus", "3", 1.53, 0.100)
                .resistor("load", "plus", "minus", 10.0));
    amps("weak-cell", "three cells and a weak one, load 10.0 ohm", "0.617", weak);
  }

  private void amps(String id, String what, String printed, Solved circuit) {
    list.printed(id + "-amps", what, printed, "A", circuit.amps("load"));
  }

  private void volts(String id, String what, String printed, Solved circuit) {
    list.printed(id + "-volts", what, printed, "V", circuit.volts("load"));
  }

  private void watts(String id, String what, String printed, Solved circuit) {
    list.printed(id + "-watts", what, printed, "W", circuit.watts("load"));
  }

  private static Solved loaded(double emf, double ohms, double load) {
    return new Solved(battery(emf, ohms).resistor("load", "plus", "minus", load));
  }

  private static Sketch battery(double emf, double ohms) {
    return new Sketch().source("battery", "plus", "minus", emf, ohms);
  }
}
