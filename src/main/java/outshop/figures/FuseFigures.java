package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import outshop.catalogue.Kind;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Unit;

/** What each fuse carries, protects, must hold and must break. */
final class FuseFigures {
  /** Longest lead between a pack and its fuse, in metres. Common practice, no source. */
  private static final double LONGEST_LEAD_METRES = 0.1;

  private final Bench bench;
  private final List<InState> states;
  private final ShortCurrents shorts;
  private final FuseSurges surges;
  private final List<FuseSeat> seats;

  FuseFigures(Bench bench, List<InState> states) {
    this.bench = bench;
    this.states = states;
    this.shorts = new ShortCurrents(bench, states);
    this.surges = new FuseSurges(bench);
    this.seats = FuseSeat.all(bench, states);
  }

  /** What each fuse lies behind, and what lies behind it and behind the fuses inside packs. */
  List<Object> places() {
    List<Object> facts = new ArrayList<>();
    for (FuseSeat seat : seats) {
      lead(seat).ifPresent(facts::add);
      if (!seat.isOpen()) {
        facts.add(behind(seat));
      }
    }
    for (Fitted pack : bench.plan().parts(Kind.PACK)) {
      inside(pack).ifPresent(facts::add);
    }
    return facts;
  }

  /** What each fuse carries, for long and for a moment. */
  List<Object> loads() {
    return each(seat -> Stream.concat(duties(seat).stream(), surges.of(seat).stream()));
  }

  /** What flows through each fuse where there is a short. */
  List<Object> faults() {
    return each(seat -> Stream.of(fault(seat)));
  }

  /** Each fuse against the pack; one that resets by itself against warmth. */
  List<Object> builds() {
    return each(
        seat ->
            Stream.of(
                seat.resettable()
                    ? ResettableFuse.of(bench, seat)
                    : new FuseAndPack(seat.at(), seat.ratedAmps(), packsPeak(seat))));
  }

  private List<Object> each(Function<FuseSeat, Stream<?>> facts) {
    return seats.stream().filter(s -> !s.isOpen()).<Object>flatMap(facts).toList();
  }

  /** The fuse inside a pack, where no other stands close to it. */
  private Optional<FuseBehind> inside(Fitted pack) {
    Amount rated = pack.amount("internal_fuse_amps");
    Reach circuit = new Reach(bench.circuit().links());
    Set<Link> fed = new LinkedHashSet<>();
    for (String pole : List.of(pack.name() + ".plus", pack.name() + ".minus")) {
      if (!rated.isKnown() || PackLead.of(bench.plan(), circuit, pole).fused()) {
        return Optional.empty();
      }
      states.forEach(in -> fed.addAll(in.joins().reachedWithoutFuse(pole)));
    }
    fed.removeIf(Reach::isChargingClip);
    Ampacity weakest = Ampacity.weakest(fed, rated);
    return Optional.of(
        new FuseBehind(
            Places.of(pack),
            "the fuse inside " + pack.name(),
            false,
            rated,
            weakest.conductor(),
            weakest.amps()));
  }

  /** The lead from the pack to the first fuse on its way; nothing for a fuse behind another. */
  private Optional<FuseLead> lead(FuseSeat seat) {
    for (InState in : states) {
      Optional<List<Link>> way =
          in.joins().way(seat.poleTerminal(), seat.near(), Set.of(Link.Sort.FUSE));
      if (way.isPresent()) {
        Amount longest =
            Plan.fixed(
                LONGEST_LEAD_METRES,
                Unit.METRES,
                "longest lead before a fuse",
                "common practice, no source");
        return Optional.of(new FuseLead(seat.at(), seat.pack().name(), length(way.get()), longest));
      }
    }
    return Optional.empty();
  }

  private Amount length(List<Link> way) {
    if (!bench.plan().said("wiring.pattern").is("by-wire")) {
      return bench.plan().amount("wiring.pack_to_fuse");
    }
    return Amount.sum(
        "lead from pack to fuse",
        Unit.METRES,
        way.stream().filter(l -> l.sort() == Link.Sort.WIRE).map(Link::length).toList());
  }

  private List<FuseDuty> duties(FuseSeat seat) {
    String fuse = seat.fuse().name();
    List<FuseDuty> duties = new ArrayList<>();
    if (!seat.resettable() && flows(bench.cases().sustainedAmps(fuse))) {
      duties.add(
          new FuseDuty(seat.at(), "running", bench.cases().sustainedAmps(fuse), seat.ratedAmps()));
    }
    if (!seat.resettable() && charged(seat) && flows(bench.cases().chargingAmps(fuse))) {
      duties.add(
          new FuseDuty(seat.at(), "charging", bench.cases().chargingAmps(fuse), seat.ratedAmps()));
    }
    return duties;
  }

  /** Whether a charger reaches the fuse. */
  private boolean charged(FuseSeat seat) {
    Joins charging = new Joins(bench.circuit(), bench.circuit().charging());
    return bench.circuit().devices(Device.Sort.CHARGER).stream()
        .flatMap(c -> Stream.of(c.terminal("plus"), c.terminal("minus")))
        .anyMatch(t -> charging.joined(t, seat.near()));
  }

  /** Whether current flows, or may flow for all that is known. */
  static boolean flows(Amount amps) {
    return amps.isMissing() || (amps instanceof Amount.Known k && Exact.above(k.high(), 0));
  }

  private FuseBehind behind(FuseSeat seat) {
    Amount lets = seat.resettable() ? seat.fuse().amount("trip_amps") : seat.ratedAmps();
    Ampacity weakest = Ampacity.weakest(seat.protectedLinks(bench, states), lets);
    return new FuseBehind(
        seat.at(),
        seat.fuse().name(),
        seat.resettable(),
        lets,
        weakest.conductor(),
        weakest.amps());
  }

  private FuseFault fault(FuseSeat seat) {
    ShortCurrents.AtEnd least = shorts.least(seat);
    return new FuseFault(
        seat.at(),
        seat.resettable(),
        seat.resettable() ? seat.fuse().amount("trip_amps") : seat.ratedAmps(),
        least.end(),
        least.amps(),
        shorts.most(seat),
        seat.fuse().amount("breaking_amps"));
  }

  private Amount packsPeak(FuseSeat seat) {
    List<Amount> each =
        seat.feeders(bench, states).stream().map(p -> p.amount("peak_amps")).toList();
    return each.size() == 1 ? each.get(0) : Amount.sum("packs' peak current", Unit.AMPS, each);
  }
}
