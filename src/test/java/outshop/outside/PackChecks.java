package outshop.outside;

import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import outshop.circuit.PackValues;
import outshop.figures.Laws;
import outshop.units.Amount;

/** What packs of known cells deliver. */
final class PackChecks {
  private final CheckList list = new CheckList("pack");

  private PackChecks() {}

  static List<OutsideCheck> all() {
    PackChecks checks = new PackChecks();
    checks.lithiumIon();
    checks.otherCells();
    checks.lowest();
    checks.resistance();
    checks.curve();
    return checks.list.all();
  }

  private void lithiumIon() {
    String[][] windows = {
      {"2", "8.4", "7.2", "6.0"},
      {"3", "12.6", "10.8", "9.0"},
      {"4", "16.8", "14.4", "12.0"},
      {"5", "21.0", "18.0", "15.0"},
      {"6", "25.2", "21.6", "18.0"},
      {"7", "29.4", "25.2", "21.0"},
    };
    for (String[] w : windows) {
      int cells = Integer.parseInt(w[0]);
      full("li-ion", cells, w[1], Sources.LITHIUM_CHARGE);
      nominal("li-ion", cells, w[2], "usual marking of lithium-ion cells, 3.60 V (second-hand)");
      empty("li-ion", cells, w[3], "3.0 V a lithium-ion cell, from memory");
    }
  }

  private void otherCells() {
    String phosphate = "lithium iron phosphate 3.2, 3.65, 2.5 V a cell, from memory";
    for (String[] w :
        new String[][] {{"4", "14.6", "12.8", "10.0"}, {"6", "21.9", "19.2", "15.0"}}) {
      int cells = Integer.parseInt(w[0]);
      full("lifepo4", cells, w[1], phosphate);
      nominal("lifepo4", cells, w[2], phosphate);
      empty("lifepo4", cells, w[3], phosphate);
    }
    full("nimh", 12, "17.4", "nickel-metal hydride, 1.4 to 1.5 V a cell on charge, from memory");
    nominal(
        "nimh", 12, "14.4", "usual marking of nickel-metal hydride cells, 1.20 V (second-hand)");
    empty("nimh", 12, "12.0", "nickel-metal hydride, 1.0 V a cell (second-hand)");
    nominal("nicd", 10, "12.0", "usual marking of nickel-cadmium cells, 1.20 V (second-hand)");
    empty("nicd", 10, "9.0", "nickel-cadmium, 0.8 to 0.9 V a cell (second-hand)");
    full("lead-acid", 6, "14.4", "sealed lead, cyclic, 2.40 to 2.45 V a cell, from memory");
    nominal("lead-acid", 6, "12.0", "usual marking of lead cells, 2.00 V (second-hand)");
    empty("lead-acid", 6, "10.5", "sealed lead, 1.75 V a cell (second-hand)");
  }

  private void lowest() {
    lowest("li-ion", "2.5", "lithium-ion, hard floor of 2.5 V (second-hand)");
    lowest(
        "lifepo4",
        "2.0",
        "lithium iron phosphate, 2.0 V on some pages, 2.5 V on others" + " (second-hand)");
    lowest("nicd", "0.8", "nickel-cadmium, 0.8 to 0.9 V (second-hand)");
    lowest("lead-acid", "1.75", "sealed lead, 1.75 V (second-hand)");
  }

  private void resistance() {
    list.from(Sources.LESSONS + "ch. 11: in series volts and resistances of cells add up")
        .same("series", "4 cells of 100 mohm in series", "0.4", "ohm", () -> ohms(4, 1));
    list.from(Sources.LESSONS + "ch. 11: n equal cells side by side have 1/n of the resistance")
        .same("parallel", "2 strings of 4 such cells", "0.2", "ohm", () -> ohms(4, 2))
        .same("single-parallel", "5 such cells side by side", "0.02", "ohm", () -> ohms(1, 5));
  }

  private void curve() {
    list.from(
            "M. Chen, G. A. Rincon-Mora, IEEE Transactions on Energy Conversion 21 (2006) 2,"
                + " pp. 504-511 (coefficients second-hand; these sums worked out from them)")
        .printed(
            "curve-at-none", "lithium-ion cell, no charge", "2.654", "V", () -> Laws.cellVolts(0))
        .printed("curve-at-half", "half charged", "3.8034", "V", () -> Laws.cellVolts(0.5))
        .printed("curve-at-all", "fully charged", "4.1029", "V", () -> Laws.cellVolts(1));
  }

  private void full(String chemistry, int cells, String volts, String source) {
    window(chemistry, cells, "full", volts, source, PackValues::fullVolts);
  }

  private void nominal(String chemistry, int cells, String volts, String source) {
    window(chemistry, cells, "nominal", volts, source, PackValues::nominalVolts);
  }

  private void empty(String chemistry, int cells, String volts, String source) {
    window(chemistry, cells, "empty", volts, source, PackValues::emptyVolts);
  }

  private void lowest(String chemistry, String volts, String source) {
    window(chemistry, 1, "lowest", volts, source, PackValues::lowestVolts);
  }

  private void window(
      String chemistry,
      int cells,
      String when,
      String volts,
      String source,
      Function<PackValues, Amount> read) {
    String words = cells == 1 ? " cell, " : " cells in series, ";
    DoubleSupplier got = () -> read.apply(pack(chemistry, cells, 1)).get().value();
    list.from(source)
        .same(
            chemistry + "-" + cells + "-" + when,
            cells + " " + chemistry + words + when,
            volts,
            "V",
            got);
  }

  private static double ohms(int series, int parallel) {
    return pack("li-ion", series, parallel).ohms().get().value();
  }

  private static PackValues pack(String chemistry, int series, int parallel) {
    return Trial.parts(
            ("pack: {kind: pack, chemistry: %s, cells_series_count: %d, strings_parallel_count: %d,"
                    + " cell_milliohms: 100 mohm, protection: no}")
                .formatted(chemistry, series, parallel))
        .pack();
  }
}
