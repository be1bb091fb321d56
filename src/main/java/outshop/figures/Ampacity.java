package outshop.figures;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Gauge;
import outshop.circuit.Link;
import outshop.circuit.WireValues;
import outshop.plan.Fitted;
import outshop.plan.Keys;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Unit;

/**
 * What a conductor carries without harm.
 *
 * @param conductor in words
 * @param amps the ampacity of a wire's gauge, or the rating of a contact
 */
record Ampacity(String conductor, Amount amps) {

  /**
   * The weakest of several conductors; absent if there is none with an ampacity. Where one is not
   * known, the weakest is missing, unless a known one is already too weak for the current.
   */
  static Ampacity weakest(Collection<Link> links, Amount currentAmps) {
    List<Ampacity> all = links.stream().flatMap(link -> of(link).stream()).toList();
    List<Ampacity> known = all.stream().filter(a -> a.amps().isKnown()).toList();
    Optional<Ampacity> least = least(known);
    boolean tooWeak =
        least.isPresent()
            && currentAmps instanceof Amount.Known current
            && Exact.above(current.low(), least.get().amps().get().high());
    if (known.size() == all.size() || tooWeak) {
      return least.orElse(new Ampacity("nothing", new Amount.Absent("conductors behind it")));
    }
    return new Ampacity("a conductor", Cases.least(all.stream().map(Ampacity::amps).toList()));
  }

  private static Optional<Ampacity> least(List<Ampacity> known) {
    if (known.isEmpty()) {
      return Optional.empty();
    }
    Ampacity first = known.get(0);
    for (Ampacity other : known) {
      first = other.amps().get().middle() < first.amps().get().middle() ? other : first;
    }
    Amount least = Cases.least(known.stream().map(Ampacity::amps).toList());
    return Optional.of(new Ampacity(first.conductor(), least));
  }

  private static Optional<Ampacity> of(Link link) {
    Optional<Amount> amps =
        switch (link.sort()) {
          case WIRE ->
              Optional.of(
                  link.part().map(WireValues::chassisAmps).orElseGet(Ampacity::noWireStated));
          case SWITCH -> link.part().map(p -> p.amount("dc_amps"));
          case BREAK_CONTACT -> link.part().map(p -> p.amount("break_amps"));
          case CONTACT -> link.part().map(Ampacity::contact);
          case FUSE, BODY -> Optional.empty();
        };
    return amps.filter(a -> !a.isAbsent()).map(a -> new Ampacity(Reach.words(link), a));
  }

  private static Amount noWireStated() {
    return Amount.missing("wiring", "wire", Keys.require("wiring.wire").how());
  }

  /** A contact's rating; with all its neighbours loaded where that is stated. */
  private static Amount contact(Fitted part) {
    Amount alone = part.amount("contact_amps");
    if (part.is(Kind.JACK)) {
      return alone;
    }
    List<Amount> ratings = new ArrayList<>(List.of(alone));
    Stream.of(part.amount("all_loaded_amps")).filter(Amount::isKnown).forEach(ratings::add);
    if (part.is(Kind.CABLE)) {
      ratings.add(conductor(part));
    }
    return Cases.least(ratings);
  }

  private static Amount conductor(Fitted cable) {
    Amount awg = cable.amount("wire_awg");
    boolean listed =
        awg instanceof Amount.Known k && Gauge.chassisAmps((int) Math.round(k.value())).isPresent();
    if (awg.isKnown() && !listed) {
      return Amount.missing(
          cable.name(), "ampacity", "the cable maker's table: the handbook's ends at 32 AWG");
    }
    return Amount.computed(
        cable.name() + ": chassis ampacity of its wires",
        Unit.AMPS,
        "handbook table by gauge",
        v -> Gauge.chassisAmps((int) Math.round(v[0])).orElseThrow(),
        awg);
  }
}
