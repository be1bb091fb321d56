package outshop.circuit.solve;

import java.util.LinkedHashMap;
import java.util.Map;

/** Networks of every kind of element and of every kind of trouble, compared with ngspice. */
public final class ComparedNetworks {
  private ComparedNetworks() {}

  /** By the name of their stored results. */
  public static Map<String, Network> all() {
    Map<String, Network> all = new LinkedHashMap<>();
    all.put("series-parallel", seriesParallel());
    all.put("packs-in-parallel", packsInParallel());
    all.put("drops", drops());
    all.put("lamps", lamps());
    all.put("sinks", sinks());
    all.put("power-sinks", powerSinks());
    all.put("switching-regulator", regulator(0.85));
    all.put("linear-regulator", regulator(0));
    all.put("starved-regulator", starvedRegulator());
    all.put("regulator-with-own-output", regulatorWithOwnOutput());
    all.put("charging", charging());
    all.put("collapsed-by-a-sink", collapsedBySink());
    all.put("collapsed-by-a-power-sink", collapsedByPowerSink());
    all.put("reversed-pack", reversedPack());
    all.put("short-circuit", shortCircuit());
    all.put("two-islands-and-a-dead-one", islands());
    all.put("locomotive", SpeedTest.locomotive());
    return all;
  }

  static Network seriesParallel() {
    return new Sketch()
        .source("pack", "plus", "minus", 14.8, 0.12)
        .resistor("feed", "plus", "far", 0.021)
        .resistor("motor", "far", "near", 7.0)
        .resistor("bulb", "far", "near", 48)
        .resistor("return", "near", "minus", 0.021)
        .network();
  }

  private static Network packsInParallel() {
    return new Sketch()
        .source("fuller", "plus 1", "minus", 16.6, 0.09)
        .source("emptier", "plus 2", "minus", 15.1, 0.14)
        .resistor("lead 1", "plus 1", "joint", 0.012)
        .resistor("lead 2", "plus 2", "joint", 0.015)
        .resistor("motor", "joint", "minus", 6.2)
        .network();
  }

  private static Network drops() {
    return new Sketch()
        .source("pack", "plus", "minus", 12.6, 0.1)
        .drop("bridge in", "plus", "a", 0.7, 0.05)
        .resistor("motor", "a", "b", 5)
        .drop("bridge out", "b", "minus", 0.7, 0.05)
        .drop("flyback", "b", "a", 0.7, 0.05)
        .drop("blocked", "minus", "plus", 0.3, 0.02)
        .network();
  }

  /** One lights; of two in series on 3.7 V none does. */
  private static Network lamps() {
    return new Sketch()
        .source("pack", "plus", "minus", 14.8, 0.1)
        .resistor("resistor", "plus", "lit", 560)
        .drop("lamp", "lit", "minus", 3.2, 12)
        .source("cell", "cell plus", "minus", 3.7, 0.05)
        .resistor("other resistor", "cell plus", "dark", 100)
        .drop("dark lamp 1", "dark", "mid", 2.0, 9)
        .drop("dark lamp 2", "mid", "minus", 2.0, 9)
        .network();
  }

  private static Network sinks() {
    return new Sketch()
        .source("pack", "plus", "minus", 11.1, 0.15)
        .resistor("fuse", "plus", "in", 0.02)
        .sink("receiver", "in", "minus", 0.035)
        .sink("motor", "in", "minus", 1.9)
        .sink("large", "in", "between", 0.8)
        .sink("small", "between", "minus", 0.25)
        .network();
  }

  private static Network powerSinks() {
    return new Sketch()
        .source("pack", "plus", "minus", 14.4, 0.2)
        .resistor("feed", "plus", "in", 0.05)
        .powerSink("sound", "in", "minus", 9, 4)
        .resistor("long feed", "in", "far", 2.5)
        .powerSink("smoke", "far", "minus", 6.5, 3)
        .network();
  }

  private static Network regulator(double efficiency) {
    return new Sketch()
        .source("pack", "plus", "minus", 14.4, 0.2)
        .resistor("feed", "plus", "in", 0.05)
        .regulator("regulator", "in", "out", "minus", 5, efficiency)
        .sink("receiver", "out", "minus", 0.4)
        .resistor("lamp resistor", "out", "lamp", 150)
        .drop("lamp", "lamp", "minus", 2.9, 10)
        .network();
  }

  private static Network starvedRegulator() {
    return new Sketch()
        .source("pack", "plus", "minus", 14.4, 0.2)
        .resistor("thin wire", "plus", "in", 12)
        .regulator("regulator", "in", "out", "minus", 6, 0)
        .resistor("heater", "out", "minus", 5)
        .network();
  }

  private static Network regulatorWithOwnOutput() {
    return new Sketch()
        .source("pack", "plus", "minus", 14.4, 0.2)
        .regulator("regulator", "plus", "minus", "out", "back", 9, 0.8)
        .resistor("load", "out", "back", 12)
        .sink("standing", "plus", "minus", 0.1)
        .network();
  }

  private static Network charging() {
    return new Sketch()
        .supply("charger", "pin", "sleeve", 1.8)
        .resistor("lead", "pin", "plus", 0.06)
        .source("pack", "plus", "minus", 15.2, 0.16)
        .resistor("return", "minus", "sleeve", 0.06)
        .sink("left on", "plus", "minus", 0.12)
        .network();
  }

  private static Network collapsedBySink() {
    return new Sketch()
        .source("cell", "plus", "minus", 1.58, 0.2)
        .sink("motor", "plus", "minus", 8.5)
        .network();
  }

  private static Network collapsedByPowerSink() {
    return new Sketch()
        .source("pack", "plus", "minus", 12, 1)
        .powerSink("motor", "plus", "minus", 60, 4)
        .network();
  }

  private static Network reversedPack() {
    return new Sketch()
        .source("pack", "minus", "plus", 12, 0.1)
        .sink("receiver", "plus", "minus", 0.4)
        .powerSink("sound", "plus", "minus", 6, 4)
        .regulator("regulator", "plus", "out", "minus", 5, 0.9)
        .resistor("load", "out", "minus", 50)
        .drop("clamp", "minus", "plus", 0.7, 0.5)
        .network();
  }

  private static Network shortCircuit() {
    return new Sketch()
        .source("pack", "plus", "minus", 16.8, 0.09)
        .resistor("feed", "plus", "a", 0.008)
        .resistor("screw", "a", "b", 0.0005)
        .resistor("return", "b", "minus", 0.008)
        .sink("receiver", "a", "b", 0.3)
        .network();
  }

  private static Network islands() {
    return new Sketch()
        .source("pack", "plus", "minus", 14.4, 0.2)
        .resistor("motor", "plus", "minus", 9)
        .source("tender pack", "tender plus", "tender minus", 7.2, 0.1)
        .sink("tender lamp", "tender plus", "tender minus", 0.09)
        .resistor("left over", "x", "y", 3)
        .sink("unplugged", "x", "y", 0.5)
        .network();
  }
}
