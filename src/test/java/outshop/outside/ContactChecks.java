package outshop.outside;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import outshop.figures.Laws;
import outshop.figures.SwitchLoad;
import outshop.findings.Outcome;
import outshop.units.Amount;
import outshop.units.Exact;

/** Ratings of switches and connectors. */
final class ContactChecks {
  /** By the number of loaded wires. */
  private static final Map<Integer, String> PUBLISHED =
      new TreeMap<>(
          Map.of(2, "0.9", 3, "0.81", 4, "0.76", 5, "0.71", 6, "0.66", 10, "0.57", 25, "0.40"));

  private final CheckList list = new CheckList("contact");

  private ContactChecks() {}

  static List<OutsideCheck> all() {
    ContactChecks checks = new ContactChecks();
    checks.factors();
    checks.connectors();
    return checks.list.all();
  }

  private void factors() {
    list.from(Sources.CIRCULAR + "Table 11-4, 28 V direct");
    factor(28, "lamp", "8");
    factor(28, "inductive", "4");
    factor(28, "motor", "3");
    factor(28, "resistive", "2");
    list.from(Sources.CIRCULAR + "Table 11-4, 12 V direct");
    factor(12, "lamp", "5");
    factor(12, "inductive", "2");
    factor(12, "motor", "2");
    factor(12, "resistive", "1");
    list.from(Sources.CIRCULAR + "Table 11-4; a pack between its columns takes the stricter one")
        .same("pack-12.6", "motor, 12.6 V pack", "2", "", () -> motorFactor("12.6 V"))
        .same("pack-16.8", "motor, 16.8 V pack", "3", "", () -> motorFactor("16.8 V"))
        .same("pack-25.2", "motor, 25.2 V pack", "3", "", () -> motorFactor("25.2 V"));
  }

  private void factor(int volts, String load, String factor) {
    list.same(
        "factor-" + volts + "-" + load,
        "rating over current, " + load + " load, " + volts + " V",
        factor,
        "",
        () -> Laws.switchFactor(volts, load));
  }

  private static double motorFactor(String packVolts) {
    return Trial.base()
        .with("parts.pack.full_volts", packVolts)
        .fact(SwitchLoad.class)
        .motorFactor()
        .get()
        .value();
  }

  private void connectors() {
    list.from("IEC 60512-5-2: usable current is 0.8 of the base curve (second-hand)")
        .bound(
            "derating",
            "share of its rating from which a contact is warned of",
            "0.8",
            "current/connector-contact-overloaded",
            Outcome.WARNING);
    list.from(
        "ECSS-Q-ST-30-11C Rev.2, Table 6-41, factors for wires in a bundle (second-hand; a"
            + " cross-check: the program assumes a range for contacts)");
    PUBLISHED.forEach(this::loaded);
    list.same(
        "loaded-range",
        "of these factors, how many lie in the range that is assumed",
        String.valueOf(PUBLISHED.size()),
        "",
        ContactChecks::inRange);
  }

  private void loaded(int contacts, String factor) {
    list.within(
        0.06,
        "loaded-" + contacts,
        contacts + " loaded, each of the rating of one alone",
        factor,
        "",
        () -> Laws.loadedContacts(contacts).value());
  }

  private static double inRange() {
    return PUBLISHED.entrySet().stream().filter(e -> inRange(e.getKey(), e.getValue())).count();
  }

  private static boolean inRange(int contacts, String factor) {
    Amount.Known assumed = Laws.loadedContacts(contacts);
    double published = Double.parseDouble(factor);
    return !Exact.below(published, assumed.low()) && !Exact.above(published, assumed.high());
  }
}
