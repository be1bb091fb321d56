package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.State;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;

/** Amps through switches, jacks and connectors. */
final class ContactFigures {
  /** A contact that carries less than this share of the busiest one warms nothing: counts idle. */
  private static final double LOADED_SHARE = 0.1;

  private final Bench bench;
  private final Demands demands;

  private ContactFigures(Bench bench, Demands demands) {
    this.bench = bench;
    this.demands = demands;
  }

  static List<Object> of(Bench bench, Demands demands) {
    ContactFigures figures = new ContactFigures(bench, demands);
    List<Object> facts = new ArrayList<>();
    bench.plan().parts(Kind.SWITCH).forEach(s -> figures.switchContacts(s, facts));
    bench.plan().parts(Kind.JACK).forEach(j -> figures.breakContact(j, facts));
    figures.chargingContacts(facts);
    bench.plan().parts(Kind.CONNECTOR).forEach(c -> figures.matedContacts(c, facts));
    bench.plan().parts(Kind.CABLE).forEach(c -> figures.matedContacts(c, facts));
    return facts;
  }

  private List<Link> links(Fitted part, Link.Sort sort) {
    return bench.circuit().links().stream()
        .filter(l -> l.sort() == sort && l.part().filter(part::equals).isPresent())
        .toList();
  }

  private void switchContacts(Fitted part, List<Object> facts) {
    State running = bench.circuit().running();
    State charging = bench.circuit().charging();
    List<Amount> run = new ArrayList<>();
    List<Amount> charge = new ArrayList<>();
    for (Link link : links(part, Link.Sort.SWITCH)) {
      if (link.closed().in(running)) {
        run.add(demands.sustained(link.name()));
      } else if (link.closed().in(charging)) {
        charge.add(demands.charging(link));
      }
    }
    switchLoad(part, false, run).ifPresent(facts::add);
    switchLoad(part, true, charge).ifPresent(facts::add);
  }

  private Optional<SwitchLoad> switchLoad(Fitted part, boolean charging, List<Amount> contacts) {
    if (contacts.isEmpty()) {
      return Optional.empty();
    }
    Amount amps = Cases.greatest(contacts);
    if (amps.isAbsent() || Demands.isNothing(amps)) {
      return Optional.empty();
    }
    Amount factor = motorFactor(part);
    Amount needed =
        Amount.computed(
            part.name() + ": rating that a motor asks for",
            Unit.AMPS,
            "current x factor for a motor",
            v -> v[0] * v[1],
            amps,
            factor);
    return Optional.of(
        new SwitchLoad(Places.of(part), part, charging, amps, factor, needed, factorWords()));
  }

  private Amount motorFactor(Fitted part) {
    Amount full = fullVolts();
    if (!(full instanceof Amount.Known k)) {
      return full;
    }
    return Amount.known(
        DcLoadFactors.of(k.value()).motor(),
        Unit.COUNT,
        Origin.STANDARD,
        part.name() + ": factor for a motor",
        "FAA AC 43.13-1B, Table 11-4, for " + AmountText.text(k) + " at most");
  }

  private Amount fullVolts() {
    return bench
        .pack()
        .map(p -> p.fullVolts())
        .orElseGet(() -> Amount.missing("parts", "pack", "choose a pack"));
  }

  private String factorWords() {
    DcLoadFactors factors =
        fullVolts() instanceof Amount.Known k
            ? DcLoadFactors.of(k.value())
            : DcLoadFactors.AT_28_VOLTS;
    return "x %s for a motor, x %s for an inductive load, x %s for lamps"
        .formatted(
            AmountText.number(factors.motor()),
            AmountText.number(factors.inductive()),
            AmountText.number(factors.lamp()));
  }

  /** The load's current through the contact that opens when the plug goes in, if it goes there. */
  private void breakContact(Fitted jack, List<Object> facts) {
    if (jack.said("breaks") instanceof Said.Unsaid unsaid) {
      if (isBreakUsed(jack)) {
        Amount unknown = new Amount.Missing(List.of(unsaid.want()));
        facts.add(contact(jack, ContactLoad.Sort.BREAK, jack.name(), unknown, "break_amps"));
      }
      return;
    }
    for (Link link : links(jack, Link.Sort.BREAK_CONTACT)) {
      Amount amps = demands.sustained(link.name());
      if (!Demands.isNothing(amps)) {
        facts.add(contact(jack, ContactLoad.Sort.BREAK, link.name(), amps, "break_amps"));
      }
    }
  }

  private boolean isBreakUsed(Fitted jack) {
    String contact = jack.name() + ".break";
    return bench.plan().said("wiring.pattern").is("break-contact-jack")
        || bench.circuit().links().stream()
            .anyMatch(l -> l.from().equals(contact) || l.to().equals(contact));
  }

  /** The charger's current passes both contacts of jack and plug, whatever lies behind them. */
  private void chargingContacts(List<Object> facts) {
    List<Fitted> chargers = bench.plan().parts(Kind.CHARGER);
    if (chargers.isEmpty()) {
      return;
    }
    Amount amps =
        Cases.greatest(chargers.stream().map(charger -> charger.amount("charge_amps")).toList());
    for (Kind kind : List.of(Kind.PLUG, Kind.JACK)) {
      for (Fitted part : bench.plan().parts(kind)) {
        facts.add(contact(part, ContactLoad.Sort.CHARGING, part.name(), amps, "contact_amps"));
      }
    }
  }

  private static ContactLoad contact(
      Fitted part, ContactLoad.Sort sort, String name, Amount amps, String column) {
    return new ContactLoad(Places.of(part), sort, name, amps, part.amount(column), "");
  }

  private void matedContacts(Fitted part, List<Object> facts) {
    List<Link> contacts = links(part, Link.Sort.CONTACT);
    List<Amount> running = contacts.stream().map(l -> demands.sustained(l.name())).toList();
    List<Amount> charging = contacts.stream().map(demands::charging).toList();
    Optional<ContactLoad> one = mated(part, contacts, running);
    Optional<ContactLoad> other = mated(part, contacts, charging);
    Optional<ContactLoad> both = one.flatMap(a -> other.flatMap(b -> worse(a, b)));
    if (both.isPresent()) {
      facts.add(both.get());
    } else {
      one.ifPresent(facts::add);
      other.ifPresent(facts::add);
    }
  }

  /** The greater load of two, where both are known and stand against the same rating. */
  private static Optional<ContactLoad> worse(ContactLoad one, ContactLoad other) {
    boolean comparable =
        one.amps().isKnown()
            && other.amps().isKnown()
            && one.neighbours().equals(other.neighbours());
    if (!comparable) {
      return Optional.empty();
    }
    Amount most = Cases.greatest(List.of(one.amps(), other.amps()));
    ContactLoad load = most.get().label().equals(one.amps().get().label()) ? one : other;
    return Optional.of(
        new ContactLoad(
            load.at(), load.sort(), load.contact(), most, load.ratingAmps(), load.neighbours()));
  }

  private static Optional<ContactLoad> mated(Fitted part, List<Link> contacts, List<Amount> each) {
    List<Amount> present = each.stream().filter(a -> !a.isAbsent()).toList();
    if (present.isEmpty()) {
      return Optional.empty();
    }
    Amount worst = Cases.greatest(present);
    if (!(worst instanceof Amount.Known most)) {
      return Optional.of(contact(part, ContactLoad.Sort.MATED, part.name(), worst, "contact_amps"));
    }
    if (Demands.isNothing(worst)) {
      return Optional.empty();
    }
    String busiest = "";
    int loaded = 0;
    for (int i = 0; i < each.size(); i++) {
      if (each.get(i) instanceof Amount.Known k) {
        boolean first = busiest.isEmpty() && Exact.same(k.value(), most.value());
        busiest = first ? contacts.get(i).name() : busiest;
        loaded += k.value() > LOADED_SHARE * most.value() ? 1 : 0;
      }
    }
    return Optional.of(
        new ContactLoad(
            Places.of(part),
            ContactLoad.Sort.MATED,
            busiest,
            worst,
            rating(part, loaded),
            loaded == 1 ? "its neighbours idle" : loaded + " contacts loaded"));
  }

  /**
   * What each contact may carry: alone, as the data sheet says for one; else as it says for all
   * loaded. Where it says nothing of that, the truth lies between the rating of one and the current
   * at which all together warm the body no more than that one does (heat goes with the square of
   * the current, so rating / sqrt(loaded)).
   */
  static Amount rating(Fitted part, int loaded) {
    Amount alone = part.amount("contact_amps");
    Amount stated = part.amount("all_loaded_amps");
    if (loaded <= 1) {
      return alone;
    }
    if (!stated.isMissing() || !(alone instanceof Amount.Known one)) {
      return stated;
    }
    double least = one.value() / Math.sqrt(loaded);
    return Amount.assumed(
        Math.sqrt(least * one.value()),
        least,
        one.value(),
        Unit.AMPS,
        part.name() + ": all loaded amps",
        "not stated; between the rating of one contact and that rating / sqrt(contacts loaded)");
  }
}
