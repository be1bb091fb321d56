package outshop.outside;

import java.util.List;
import outshop.circuit.Gauge;
import outshop.circuit.WireValues;
import outshop.figures.WireLoad;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Origin;
import outshop.units.Unit;

/** Resistance, diameter and ampacity of copper wire. */
final class WireChecks {
  private static final double METRES_IN_1000_FEET = 304.8;
  private static final double FEET_2300 = 2300 * 0.3048;
  private static final double MM2_IN_CIRCULAR_MIL = 5.06707479e-4;
  private static final double TABLE_SHARE = 0.0005;

  /** A line of the handbook's table. */
  private record Line(int awg, String ohmsPer1000Feet, String chassisAmps) {}

  private static final List<Line> TABLE =
      List.of(
          new Line(14, "2.525", "32"),
          new Line(16, "4.016", "22"),
          new Line(18, "6.385", "16"),
          new Line(19, "8.051", "14"),
          new Line(20, "10.15", "11"),
          new Line(21, "12.80", "9"),
          new Line(22, "16.14", "7"),
          new Line(23, "20.36", "4.7"),
          new Line(24, "25.67", "3.5"),
          new Line(25, "32.37", "2.7"),
          new Line(26, "40.81", "2.2"),
          new Line(27, "51.47", "1.7"),
          new Line(28, "64.90", "1.4"),
          new Line(29, "81.83", "1.2"),
          new Line(30, "103.2", "0.86"),
          new Line(31, "130.1", "0.70"),
          new Line(32, "164.1", "0.53"));

  private final CheckList list = new CheckList("wire");

  private WireChecks() {}

  static List<OutsideCheck> all() {
    WireChecks checks = new WireChecks();
    checks.copper();
    checks.diameters();
    checks.resistances();
    checks.stranded();
    checks.ampacities();
    checks.freeAir();
    return checks.list.all();
  }

  private void copper() {
    list.from("International Annealed Copper Standard (IEC 60028), 20 C (second-hand)")
        .within(
            0.01,
            "conductivity",
            "conductivity of annealed copper",
            "58.0",
            "MS/m",
            () -> 1e-6 / Gauge.ohmsPerMetre(1e6))
        .printed(
            "square-millimetre", "1 m of 1 mm2", "0.017241", "ohm", () -> Gauge.ohmsPerMetre(1));
  }

  private void diameters() {
    list.from(Sources.GAUGE_LAW)
        .printed("diameter-36", "36 AWG, diameter", "0.1270", "mm", () -> Gauge.diameterMm(36))
        .printed("diameter-4-0", "4/0 AWG, diameter", "11.684", "mm", () -> Gauge.diameterMm(-3))
        .printed(
            "diameter-step",
            "diameter of one gauge over that of the next",
            "1.1229322",
            "",
            () -> Gauge.diameterMm(20) / Gauge.diameterMm(21));
    list.from(Sources.COLLEGE + "module m42346, problem")
        .printed("diameter-12", "12 AWG, diameter", "2.053", "mm", () -> Gauge.diameterMm(12))
        .printed("ohms-12", "20.0 m of 12 AWG", "0.104", "ohm", () -> ohms(12, 20.0));
    list.from(Sources.UNIVERSITY + "module m58731, problem")
        .printed("area-12", "12 AWG, cross-section", "3.31", "mm2", () -> Gauge.areaMm2(12));
    list.from(Sources.LESSONS + "ch. 12, Physics of Conductors and Insulators")
        .within(50, "area-2-0", "2/0 AWG, cross-section", "133100", "cmil", () -> circularMils(-1))
        .within(50, "area-1-0", "1/0 AWG, cross-section", "105500", "cmil", () -> circularMils(0));
    list.from(
            Sources.LESSONS
                + "ch. 12 (a cross-check: its copper has 1.678e-8 ohm m, 2.7 % less than the"
                + " standard's)")
        .within(0.17, "long-wire", "2300 ft of 14 AWG", "5.651", "ohm", () -> ohms(14, FEET_2300));
  }

  private void resistances() {
    list.from(Sources.WIRE_TABLE + ", ohms per 1000 ft");
    for (Line line : TABLE) {
      list.within(
          TABLE_SHARE * Double.parseDouble(line.ohmsPer1000Feet()),
          "ohms-per-1000-ft-" + line.awg(),
          "1000 ft of " + line.awg() + " AWG",
          line.ohmsPer1000Feet(),
          "ohm",
          () -> ohms(line.awg(), METRES_IN_1000_FEET));
    }
  }

  /** The program reckons every wire as a solid one; the table has the most of a stranded one. */
  private void stranded() {
    list.from(Sources.CIRCULAR + "Table 11-9, most for tin-plated stranded wire (a cross-check)");
    stranded(24, "28.40", 0.11);
    stranded(22, "16.20", 0.11);
    stranded(20, "9.88", 0.11);
    stranded(18, "6.23", 0.11);
    stranded(16, "4.81", 0.18);
    stranded(14, "3.06", 0.18);
  }

  private void stranded(int awg, String ohms, double share) {
    list.within(
        share * Double.parseDouble(ohms),
        "stranded-" + awg,
        "1000 ft of " + awg + " AWG, stranded; the program takes it as solid",
        ohms,
        "ohm",
        () -> ohms(awg, METRES_IN_1000_FEET));
  }

  private void ampacities() {
    list.from(Sources.WIRE_TABLE + ", maximum amps for chassis wiring");
    for (Line line : TABLE) {
      list.same(
          "chassis-amps-" + line.awg(),
          line.awg() + " AWG inside equipment",
          line.chassisAmps(),
          "A",
          () -> chassisAmps(line.awg()));
    }
  }

  private void freeAir() {
    list.from(
            Sources.LESSONS
                + "ch. 12: in free air at 30 C, with insulation for 60 and 90 C (its figures for"
                + " 16 to 20 AWG are estimates)")
        .between("9", "12.5", "free-air-20", "20 AWG", "A", () -> chassisAmps(20))
        .between("13", "18", "free-air-18", "18 AWG", "A", () -> chassisAmps(18))
        .between("18", "24", "free-air-16", "16 AWG", "A", () -> chassisAmps(16))
        .between("25", "35", "free-air-14", "14 AWG", "A", () -> chassisAmps(14));
    list.from(Sources.CIRCULAR + "Table 11-9, wire for 105 C in a bundle: 2.5, 3, 4, 6, 7, 10 A")
        .same(
            "bundle",
            "of 24, 22, 20, 18, 16, 14 AWG, how many stand at least as much alone as in a bundle",
            "6",
            "",
            WireChecks::standAtLeastTheBundle);
  }

  private static double standAtLeastTheBundle() {
    int[] awg = {24, 22, 20, 18, 16, 14};
    double[] bundleAmps = {2.5, 3, 4, 6, 7, 10};
    int count = 0;
    for (int i = 0; i < awg.length; i++) {
      count += Exact.below(chassisAmps(awg[i]), bundleAmps[i]) ? 0 : 1;
    }
    return count;
  }

  private static double circularMils(int awg) {
    return Gauge.areaMm2(awg) / MM2_IN_CIRCULAR_MIL;
  }

  private static double ohms(int awg, double metres) {
    return WireValues.ohms("wire", stated(awg, Unit.GAUGE), stated(metres, Unit.METRES))
        .get()
        .value();
  }

  private static double chassisAmps(int awg) {
    return Trial.base()
        .with("wiring.wire.awg", awg + " AWG")
        .with("wiring.light_wire.awg", awg + " AWG")
        .fact(WireLoad.class)
        .ampacityAmps()
        .get()
        .value();
  }

  private static Amount stated(double value, Unit unit) {
    return Amount.known(value, unit, Origin.STANDARD, "wire: " + unit, "the source's");
  }
}
