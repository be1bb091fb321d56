package outshop.outside;

import java.util.List;
import outshop.figures.FuseFault;
import outshop.figures.Laws;
import outshop.figures.ResettableFuse;
import outshop.findings.Outcome;

/** Opening times of fuses, their loading, and the shorts they must clear. */
final class FuseChecks {
  private static final String BLADE = "iso8820-blade";
  private static final String QUICK = "iec60127-f";
  private static final String TIME_LAG = "iec60127-t";
  private static final String UL = "ul248-14";
  private static final String TOO_SMALL = "protection/fuse-too-small";
  private static final String CANNOT_OPEN = "protection/fuse-cannot-open";

  private final CheckList list = new CheckList("fuse");

  private FuseChecks() {}

  static List<OutsideCheck> all() {
    FuseChecks checks = new FuseChecks();
    checks.blade();
    checks.cartridges();
    checks.supplementary();
    checks.loading();
    checks.wires();
    checks.shorts();
    checks.resettable();
    return checks.list.all();
  }

  private void blade() {
    list.from(Sources.BLADE);
    holds(BLADE, "1.00", "360000");
    holds(BLADE, "1.35", "0.75");
    opens(BLADE, "1.35", "600");
    holds(BLADE, "2.00", "0.15");
    opens(BLADE, "2.00", "5");
    opens(BLADE, "3.50", "0.5");
    opens(BLADE, "6.00", "0.15");
    list.from("ISO 8820-3, blade fuses (second-hand: a row for other ratings)");
    holds(BLADE, "1.60", "0.25");
    opens(BLADE, "1.60", "50");
    list.from(
        "ISO 8820-3, rows up to 40 A, from memory; the row quoted second-hand has 0.08 s, the"
            + " shorter time stands");
    holds(BLADE, "3.50", "0.04");
    list.from("ISO 8820-3, rows up to 40 A, from memory; the row quoted second-hand sets none");
    holds(BLADE, "6.00", "0.02");
  }

  private void cartridges() {
    list.from(Sources.CARTRIDGE + "sheet 1, quick (second-hand)");
    holds(QUICK, "1.50", "3600");
    opens(QUICK, "2.10", "1800");
    list.from(Sources.CARTRIDGE + "sheet 2, quick, 125 mA to 6.3 A, from memory");
    holds(QUICK, "2.75", "0.05");
    opens(QUICK, "2.75", "2");
    holds(QUICK, "4.00", "0.01");
    opens(QUICK, "4.00", "0.3");
    opens(QUICK, "10.0", "0.02");
    list.from(Sources.CARTRIDGE + "sheet 3, time-lag, 125 mA to 6.3 A, from memory");
    holds(TIME_LAG, "1.50", "3600");
    opens(TIME_LAG, "2.10", "120");
    holds(TIME_LAG, "2.75", "0.6");
    opens(TIME_LAG, "2.75", "10");
    holds(TIME_LAG, "4.00", "0.15");
    opens(TIME_LAG, "4.00", "3");
    holds(TIME_LAG, "10.0", "0.02");
    opens(TIME_LAG, "10.0", "0.3");
  }

  private void supplementary() {
    list.from("UL 248-14, up to 30 A (second-hand)");
    opens(UL, "1.35", "3600");
    opens(UL, "2.00", "120");
    list.from("UL 248-14 promises no shortest time above 100 % (second-hand)");
    holds(UL, "1.35", "0");
  }

  private void loading() {
    list.from(
            "fuses to UL 248-14 are loaded to 75 % at 25 C (second-hand: a comparison of European"
                + " and American fuse standards)")
        .bound(
            "loading", "share of its rating that loads a fuse", "0.75", TOO_SMALL, Outcome.WARNING);
    list.from(Sources.BLADE + ": opens within 5 s at 200 %")
        .bound("short-slow", "least short, over the rating", "2", CANNOT_OPEN, Outcome.VIOLATION);
    list.from(Sources.BLADE + ": opens within 0.5 s at 350 %")
        .bound("short-quick", "short that opens it at once", "3.5", CANNOT_OPEN, Outcome.WARNING);
  }

  /** What the circular's chart allows, the rule allows too. */
  private void wires() {
    list.from(Sources.CIRCULAR + "Table 11-3, wire and circuit protector chart");
    allowed(22, 5);
    allowed(20, 5);
    allowed(18, 10);
    allowed(16, 10);
    allowed(14, 15);
  }

  private void allowed(int awg, int amps) {
    list.outcome(
        "chart-" + awg,
        "a fuse of %d A before %d AWG".formatted(amps, awg),
        "protection/fuse-above-ampacity",
        Outcome.FINE,
        () ->
            Trial.base()
                .with("wiring.wire.awg", awg + " AWG")
                .with("wiring.light_wire.awg", awg + " AWG")
                .with("parts.fuse.rated_amps", amps + " A")
                .with("parts.jack.break_amps", "20 A")
                .with("parts.jack.contact_amps", "20 A")
                .with("parts.switch.dc_amps", "20 A"));
  }

  private void shorts() {
    list.from(Sources.LESSONS + "ch. 11, Batteries and Power Systems")
        .whole("short", "10 V behind 0.2 ohm, shorted", "50", "A", FuseChecks::shortAmps);
  }

  private void resettable() {
    list.from("hold current of a resettable fuse: in still air at 25 C (second-hand)")
        .same("hold", "one of 3 A in a bay at 25 C holds", "3", "A", FuseChecks::holdAmps);
  }

  private static double holdAmps() {
    return Trial.base()
        .with("parts.fuse.style", "resettable")
        .with("parts.fuse.gate", "none")
        .with("parts.fuse.rated_amps", "none")
        .with("parts.fuse.hold_amps", "3 A")
        .with("parts.fuse.hold_warm_amps", "2.1 A")
        .with("parts.fuse.warm_celsius", "60 C")
        .with("parts.fuse.trip_amps", "5 A")
        .with("parts.fuse.bay", "tank")
        .with("locomotive.bays.tank.celsius", "25 C")
        .fact(ResettableFuse.class)
        .holdAmps()
        .get()
        .value();
  }

  private static double shortAmps() {
    return Trial.base()
        .with("parts.pack.full_volts", "10 V")
        .with("parts.pack.cells_series_count", "2")
        .with("parts.pack.strings_parallel_count", "1")
        .with("parts.pack.cell_milliohms", "100 mohm")
        .with("parts.pack.protection", "no")
        .fact(FuseFault.class)
        .mostAmps()
        .get()
        .value();
  }

  private void holds(String standard, String multiple, String seconds) {
    list.same(
        standard + "-holds-at-" + multiple,
        standard + ", holds at " + multiple + " x its rating for",
        seconds,
        "s",
        () -> Laws.fuseHoldsSeconds(standard, Double.parseDouble(multiple)));
  }

  private void opens(String standard, String multiple, String seconds) {
    list.same(
        standard + "-opens-at-" + multiple,
        standard + ", is open at " + multiple + " x its rating after",
        seconds,
        "s",
        () -> Laws.fuseOpenSeconds(standard, Double.parseDouble(multiple)));
  }
}
