package outshop.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import outshop.units.Exact;

/** Values of one part that do not agree with each other, by the part's own physics. */
final class Contradictions {
  /**
   * A value that others contradict.
   *
   * @param column the value's column
   * @param what which others, and what they give
   */
  record Found(String column, String what) {}

  /**
   * The nominal voltage of one cell, as makers mark it.
   *
   * <p>Source: Battery University, BU-303 "Confusion with voltages": lithium-ion 3.60 V, also
   * marked 3.70 V; nickel 1.20 V, also marked 1.25 V; lead acid 2.00 V. Lithium iron phosphate 3.2
   * V, also marked 3.3 V: common practice, no source.
   */
  private record CellVolts(String chemistry, double low, double high) {}

  private static final List<CellVolts> CELLS =
      List.of(
          new CellVolts("li-ion", 3.6, 3.7),
          new CellVolts("lifepo4", 3.2, 3.3),
          new CellVolts("nimh", 1.2, 1.25),
          new CellVolts("nicd", 1.2, 1.25),
          new CellVolts("lead-acid", 2.0, 2.0));

  /** How far apart two figures may lie; common practice, no source. */
  private static final double CELL_TOLERANCE = 0.03;

  private static final double ENERGY_TOLERANCE = 0.05;
  private static final double HEATER_TOLERANCE = 0.25;
  private static final double BULB_TOLERANCE = 0.10;
  private static final double AREA_TOLERANCE = 0.12;

  private final Kind kind;
  private final Map<String, Double> numbers;
  private final Map<String, String> words;
  private final List<Found> found = new ArrayList<>();

  private Contradictions(Kind kind, Map<String, Double> numbers, Map<String, String> words) {
    this.kind = kind;
    this.numbers = numbers;
    this.words = words;
  }

  /**
   * Every value that others contradict.
   *
   * @param numbers the known and plausible ones, by column, in the column's unit
   */
  static List<Found> in(Kind kind, Map<String, Double> numbers, Map<String, String> words) {
    Contradictions contradictions = new Contradictions(kind, numbers, words);
    contradictions.run();
    return contradictions.found;
  }

  private void run() {
    switch (kind) {
      case PACK -> pack();
      case SMOKE_HEATER -> smokeHeater();
      case BULB -> bulb();
      case SPEAKER -> speaker();
      case WIRE -> wire();
      default -> {}
    }
  }

  private void pack() {
    if (numbers.containsKey("cells_series_count") && numbers.containsKey("nominal_volts")) {
      for (CellVolts cell : CELLS) {
        if (cell.chemistry.equals(words.get("chemistry"))) {
          cells(cell, get("cells_series_count"), get("nominal_volts"));
        }
      }
    }
    if (have("energy_wh", "nominal_volts", "capacity_ah")) {
      apart(
          "energy_wh",
          get("nominal_volts") * get("capacity_ah"),
          ENERGY_TOLERANCE,
          "nominal_volts and capacity_ah");
    }
  }

  private void cells(CellVolts cell, double count, double nominal) {
    double low = count * cell.low;
    double high = count * cell.high;
    boolean agrees =
        !Exact.below(nominal, low * (1 - CELL_TOLERANCE))
            && !Exact.above(nominal, high * (1 + CELL_TOLERANCE));
    if (!agrees) {
      String gives = low == high ? rounded(low) : rounded(low) + " to " + rounded(high);
      found.add(
          new Found(
              "nominal_volts",
              "contradicts cells_series_count: %s %s %s %s V"
                  .formatted(
                      rounded(count),
                      cell.chemistry,
                      count == 1 ? "cell gives" : "cells give",
                      gives)));
    }
  }

  /** Ohm's law. */
  private void smokeHeater() {
    if (have("rated_amps", "rated_volts", "resistance_ohms")) {
      apart(
          "rated_amps",
          get("rated_volts") / get("resistance_ohms"),
          HEATER_TOLERANCE,
          "rated_volts and resistance_ohms");
    }
    if (have("rated_watts", "rated_volts", "resistance_ohms")) {
      apart(
          "rated_watts",
          get("rated_volts") * get("rated_volts") / get("resistance_ohms"),
          HEATER_TOLERANCE,
          "rated_volts and resistance_ohms");
    } else if (have("rated_watts", "rated_volts", "rated_amps")) {
      apart(
          "rated_watts",
          get("rated_volts") * get("rated_amps"),
          HEATER_TOLERANCE,
          "rated_volts and rated_amps");
    }
  }

  private void bulb() {
    if (have("rated_watts", "rated_volts", "rated_milliamps")) {
      apart(
          "rated_watts",
          get("rated_volts") * get("rated_milliamps"),
          BULB_TOLERANCE,
          "rated_volts and rated_milliamps");
    }
  }

  /**
   * A coil's resistance to direct current is part of its impedance; about 0.75 to 0.9 of the
   * nominal figure is usual (common practice, no source).
   */
  private void speaker() {
    if (have("dc_ohms", "impedance_ohms") && Exact.above(get("dc_ohms"), get("impedance_ohms"))) {
      found.add(
          new Found(
              "dc_ohms",
              "contradicts impedance_ohms, which is only "
                  + PartChecks.shown(
                      Columns.require(kind, "impedance_ohms"), get("impedance_ohms"))));
    }
  }

  /** Diameter of a gauge: ASTM B258, d = 0.127 mm x 92^((36 - n) / 39). */
  private void wire() {
    if (have("area_mm2", "awg")) {
      double diameter = 0.127 * Math.pow(92, (36 - get("awg")) / 39);
      apart("area_mm2", Math.PI / 4 * diameter * diameter, AREA_TOLERANCE, "awg");
    }
  }

  private void apart(String columnName, double computed, double tolerance, String others) {
    if (Exact.above(Math.abs(get(columnName) - computed), tolerance * computed)) {
      Column column = Columns.require(kind, columnName);
      found.add(
          new Found(
              columnName,
              "contradicts %s, which %s %s (more than %s %% apart)"
                  .formatted(
                      others,
                      others.contains(" and ") ? "give" : "gives",
                      PartChecks.withSymbol(rounded(computed / column.scale()), column),
                      rounded(tolerance * 100))));
    }
  }

  private boolean have(String... columns) {
    for (String column : columns) {
      if (!numbers.containsKey(column)) {
        return false;
      }
    }
    return true;
  }

  private double get(String column) {
    return numbers.get(column);
  }

  private static String rounded(double number) {
    return NumberForm.shown(new BigDecimal(number, new MathContext(3)));
  }
}
