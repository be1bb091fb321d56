package outshop.outside;

import java.util.List;
import outshop.figures.ChargeCurrent;
import outshop.figures.ChargeTime;
import outshop.figures.ChargerVolts;
import outshop.figures.ChargingTemperature;
import outshop.figures.NickelEnd;
import outshop.figures.PackEnergy;
import outshop.figures.PackPair;
import outshop.figures.TimedCharge;
import outshop.findings.Outcome;

/** Charge volts, currents and times, and the energy by which a pack may fly. */
final class ChargingChecks {
  private final CheckList list = new CheckList("charging");

  private ChargingChecks() {}

  static List<OutsideCheck> all() {
    ChargingChecks checks = new ChargingChecks();
    checks.volts();
    checks.energy();
    checks.currents();
    checks.times();
    checks.temperature();
    checks.packs();
    return checks.list.all();
  }

  private void volts() {
    list.from(Sources.LITHIUM_CHARGE);
    most("1-cell", 1, "4.25");
    most("4-cells", 4, "17.0");
    most("6-cells", 6, "25.5");
    charger("at-tolerance", "17.00 V", Outcome.FINE);
    charger("above-tolerance", "17.01 V", Outcome.VIOLATION);
  }

  private void most(String id, int cells, String volts) {
    list.same(
        "most-volts-" + id,
        cells + " lithium-ion, most volts of a charger",
        volts,
        "V",
        () ->
            Trial.parts(
                    "pack: {kind: pack, chemistry: li-ion, cells_series_count: " + cells + "}",
                    "charger: {kind: charger, type: charger}")
                .fact(ChargerVolts.class)
                .mostVolts()
                .get()
                .value());
  }

  private void charger(String id, String volts, Outcome expected) {
    list.outcome(
        id,
        volts + " on four lithium-ion cells",
        "charging/charger-volts-too-high",
        expected,
        () -> Trial.base().with("parts.charger.charge_volts", volts));
  }

  private void energy() {
    list.from(
        "UN Manual of Tests and Criteria, 38.3.2.3: nominal volts x rated capacity (as a letter of"
            + " the US PHMSA, 22-0113, has it); the products worked out");
    energy("small", "7.4", "1.1", "8.14");
    energy("over", "14.8", "6.8", "100.64");
    energy("under", "22.2", "4.5", "99.9");
    list.from(
            "air carriers' rules (ICAO, IATA): 100 Wh (second-hand: an aviation authority's page)")
        .same(
            "freely",
            "what a passenger may take without asking",
            "100",
            "Wh",
            () -> base().freely().get().value());
    flight("at", "100 Wh", Outcome.FINE);
    flight("above", "100.01 Wh", Outcome.ADVICE);
    list.from("air carriers' rules (ICAO, IATA): 160 Wh with approval (second-hand)")
        .same(
            "with-approval",
            "what a passenger may take with approval",
            "160",
            "Wh",
            () -> base().most().get().value());
  }

  private void energy(String id, String volts, String ampereHours, String wattHours) {
    list.same(
        "energy-" + id,
        volts + " V x " + ampereHours + " Ah",
        wattHours,
        "Wh",
        () ->
            Trial.parts(
                    "pack: {kind: pack, chemistry: li-ion, nominal_volts: %s V, capacity_ah: %s Ah}"
                        .formatted(volts, ampereHours))
                .fact(PackEnergy.class)
                .wattHours()
                .get()
                .value());
  }

  private static PackEnergy base() {
    return Trial.base().fact(PackEnergy.class);
  }

  private void flight(String id, String energy, Outcome expected) {
    list.outcome(
        "flight-" + id,
        "a pack of " + energy,
        "charging/air-transport",
        expected,
        () -> Trial.base().with("parts.pack.energy_wh", energy));
  }

  private void currents() {
    list.from("charging practice for lithium-ion cells: 0.5 to 1 C (second-hand)")
        .same("usual-lithium", "5.2 Ah, lithium-ion", "2.6", "A", () -> usualAmps("li-ion"));
    list.from("sealed lead, 0.1 to 0.3 C, from memory")
        .same("usual-lead", "5.2 Ah, lead-acid", "1.56", "A", () -> usualAmps("lead-acid"));
    list.from("nickel-metal hydride, 0.1 C for 14 to 16 h, from memory")
        .same("slow", "slow enough to need no end", "0.1", "C", () -> nickel().slowRate())
        .same("timed", "most that a timer puts into 5.2 Ah", "8.32", "Ah", () -> nickel().mostAh());
  }

  private static double usualAmps(String chemistry) {
    return Trial.base()
        .with("parts.pack.chemistry", chemistry)
        .fact(ChargeCurrent.class)
        .usualAmps()
        .get()
        .value();
  }

  private static Nickel nickel() {
    return new Nickel(
        Trial.base()
            .with("parts.pack.chemistry", "nimh")
            .with("parts.charger.ends_by", "timer")
            .with("parts.charger.timer_hours", "5 h"));
  }

  private record Nickel(Trial plan) {
    double slowRate() {
      return plan.fact(NickelEnd.class).slow().get().value();
    }

    double mostAh() {
      return plan.fact(TimedCharge.class).mostAh().get().value();
    }
  }

  private void times() {
    list.from(Sources.LESSONS + "ch. 11: 70 Ah at 7 A, 10 h; x 1.2: common practice, no source")
        .same("time-lithium", "70 Ah of lithium-ion at 7 A", "12", "h", () -> hours("li-ion"));
    list.from(
            Sources.LESSONS
                + "ch. 11: 70 Ah at 7 A, 10 h; nickel cells take 1.4 to 1.5 of it (second-hand)")
        .between("14", "15", "time-nickel", "70 Ah of nickel at 7 A", "h", () -> hours("nimh"));
    list.from("sealed lead: capacity / current / 0.7, from memory")
        .within(0.01, "time-lead", "70 Ah of lead at 7 A", "14.29", "h", () -> hours("lead-acid"));
  }

  private static double hours(String chemistry) {
    return Trial.parts(
            "pack: {kind: pack, chemistry: " + chemistry + ", capacity_ah: 70 Ah}",
            "charger: {kind: charger, type: charger, charge_amps: 7 A}")
        .fact(ChargeTime.class)
        .hours()
        .get()
        .value();
  }

  private void temperature() {
    list.from("no charge of lithium below 0 C (second-hand)")
        .same(
            "coldest",
            "least for a pack that states none",
            "0",
            "°C",
            () -> limits().lowest().get().value());
    list.from("IEC 62133-2, Annex A: 10 to 45 C standard, from memory")
        .same(
            "warmest",
            "most for a pack that states none",
            "45",
            "°C",
            () -> limits().highest().get().value());
  }

  private static ChargingTemperature limits() {
    return Trial.base()
        .with("parts.pack.charge_min_celsius", "(remove)")
        .with("parts.pack.charge_max_celsius", "(remove)")
        .fact(ChargingTemperature.class);
  }

  private void packs() {
    String network = Sources.LESSONS + "ch. 10: 28 V behind 4 ohm and 7 V behind 1 ohm";
    list.from(network + " side by side stand at 11.2 V; (28 - 11.2) / 4 worked out")
        .printed(
            "pair",
            "current between two packs",
            "4.20",
            "A",
            () -> pair().alwaysAmps().get().value());
    list.from(network + "; (28 - 3) / 5 worked out")
        .printed(
            "pair-unequal",
            "the same with the second at 3 V",
            "5.00",
            "A",
            () -> pair().unequalAmps().get().value());
  }

  private static PackPair pair() {
    String cell =
        ": {kind: pack, chemistry: li-ion, cells_series_count: 1, strings_parallel_count: 1,"
            + " protection: no, internal_fuse_amps: none, ";
    return Trial.parts(
            "one" + cell + "full_volts: 28 V, empty_volts: 20 V, cell_milliohms: 4000 mohm}",
            "other" + cell + "full_volts: 7 V, empty_volts: 3 V, cell_milliohms: 1000 mohm}",
            "receiver: {kind: receiver}")
        .with("wiring.pattern", "pack-taken-out")
        .fact(PackPair.class);
  }
}
