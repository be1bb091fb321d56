package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.ChargingWay;
import outshop.circuit.Device;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Said;

/** What the charger reaches with its plug in, in every position of the switches. */
final class PlugStateFigures {
  private final Bench bench;
  private final PlugStates states;
  private final Ends charger;
  private final List<Object> facts = new ArrayList<>();

  private PlugStateFigures(Bench bench, PlugStates states, Ends charger) {
    this.bench = bench;
    this.states = states;
    this.charger = charger;
  }

  static List<Object> of(Bench bench) {
    PlugStates states = PlugStates.of(bench);
    if (states.charger().isEmpty() || states.chains().isEmpty()) {
      return List.of();
    }
    PlugStateFigures figures = new PlugStateFigures(bench, states, states.charger().get());
    for (Device device : bench.circuit().devices()) {
      feed(device).ifPresent(ends -> figures.load(device, ends));
    }
    figures.reach();
    if (!ChargingWay.packTakenOut(bench.plan())) {
      bench.plan().parts(Kind.CHARGER).forEach(figures::polarity);
    }
    return figures.facts;
  }

  /**
   * The terminals at which a device draws its current, for those that a charge may harm or that may
   * disturb a charge. A LED behind its resistor may well show that a charge is on.
   */
  private static Optional<Ends> feed(Device device) {
    String name = device.name();
    return switch (device.sort()) {
      case RECEIVER, REGULATOR -> Optional.of(new Ends(name + ".in+", name + ".in-"));
      case DECODER -> Optional.of(new Ends(name + ".in-a", name + ".in-b"));
      case MOTOR -> Optional.of(new Ends(name + ".plus", name + ".minus"));
      case BULB, SMOKE_HEATER -> Optional.of(new Ends(name + ".a", name + ".b"));
      case PACK, CHARGER, CAPACITOR, LED, RESISTOR, SPEAKER -> Optional.empty();
    };
  }

  /** Only what hangs on pack or charger itself in some state; what hangs behind it goes with it. */
  private void load(Device device, Ends load) {
    At at = Places.of(device);
    if (unwired()) {
      if (device.sort() == Device.Sort.RECEIVER) {
        facts.add(new LoadOnCharge(at, "", Standing.open(states.unknown())));
      }
      return;
    }
    boolean ever =
        states.pluggedOut().stream().anyMatch(s -> s.meets(load, states.chains()))
            || states.pluggedIn().stream().anyMatch(s -> fed(s, load));
    if (!ever && !maybe(device)) {
      return;
    }
    List<PlugStates.Seen> parted = new ArrayList<>();
    List<PlugStates.Seen> joined = new ArrayList<>();
    boolean alone = false;
    for (PlugStates.Seen seen : states.pluggedIn()) {
      boolean charges = seen.meets(charger, states.chains());
      alone |= !charges && load.meet(seen.joins(), charger);
      if (charges) {
        (fed(seen, load) ? joined : parted).add(seen);
      }
    }
    if (alone || !joined.isEmpty() || !parted.isEmpty()) {
      String parting = parted.isEmpty() ? "" : parted.get(0).positions();
      facts.add(new LoadOnCharge(at, parting, loadStanding(alone, joined, parted)));
    }
  }

  /** A receiver may well hang on a break contact of which nobody said on which side it is. */
  private boolean maybe(Device device) {
    return device.sort() == Device.Sort.RECEIVER
        && bench.circuit().unknowns().stream().anyMatch(want -> want.what().equals("breaks"));
  }

  private Standing loadStanding(
      boolean alone, List<PlugStates.Seen> joined, List<PlugStates.Seen> parted) {
    if (!alone && joined.isEmpty()) {
      return Standing.FINE;
    }
    if (!states.unknown().isEmpty()) {
      return Standing.open(states.unknown());
    }
    if (alone) {
      return Standing.of("fed-by-charger");
    }
    return Standing.of(parted.isEmpty() ? "never-parted" : "by-switch");
  }

  private boolean fed(PlugStates.Seen seen, Ends load) {
    return load.meet(seen.joins(), charger) || seen.meets(load, states.chains());
  }

  /** Whether the plan does not say how anything is wired. */
  private boolean unwired() {
    return bench.plan().said("wiring.pattern").isUnsaid() && bench.plan().wires().isEmpty();
  }

  private void reach() {
    Plan plan = bench.plan();
    String packs = String.join(", ", states.chains().stream().map(Chain::name).toList());
    Optional<Fitted> jack =
        ChargingWay.packTakenOut(plan) ? Optional.empty() : bench.first(Kind.JACK);
    jack.or(() -> bench.first(Kind.CHARGER))
        .ifPresent(part -> facts.add(new ChargerReach(Places.of(part), packs, reachStanding())));
  }

  private Standing reachStanding() {
    if (states.pluggedIn().stream().anyMatch(s -> s.meets(charger, states.chains()))) {
      return Standing.FINE;
    }
    if (!states.unknown().isEmpty()) {
      return Standing.open(states.unknown());
    }
    for (Device device : bench.circuit().devices()) {
      Optional<Ends> ends = feed(device);
      for (PlugStates.Seen seen : states.pluggedIn()) {
        if (ends.isPresent() && ends.get().meet(seen.joins(), charger)) {
          return Standing.of("load-instead");
        }
      }
    }
    return Standing.of("nothing");
  }

  /** A charger beside the first one is taken to meet the jack by its own plug. */
  private void polarity(Fitted other) {
    boolean byHand = ChargingWay.wiredByHand(bench.plan(), other);
    Optional<Fitted> plug = bench.first(Kind.PLUG);
    Said centre = ChargingWay.plugCentre(other, plug);
    Optional<Ends> ends = byHand ? Optional.of(poles(other)) : atJack(centre);
    if (ends.isEmpty() || !meetsSome(ends.get())) {
      return;
    }
    String pack = states.chains().get(0).name();
    facts.add(
        new ChargerPolarity(
            Places.of(other), pack, centre, polarityStanding(ends.get(), byHand, centre, other)));
  }

  private static Ends poles(Fitted charger) {
    return new Ends(charger.name() + ".plus", charger.name() + ".minus");
  }

  private Optional<Ends> atJack(Said centre) {
    return bench
        .first(Kind.JACK)
        .map(PlugStates::jackEnds)
        .map(e -> centre.is("minus") ? new Ends(e.minus(), e.plus()) : e);
  }

  /** Whether at least one of the two is joined to a pole of a pack. */
  private boolean meetsSome(Ends ends) {
    for (PlugStates.Seen seen : states.pluggedIn()) {
      for (Chain chain : states.chains()) {
        if (!seen.shorts(chain) && ends.touches(seen.joins(), chain.ends())) {
          return true;
        }
      }
    }
    return false;
  }

  private Standing polarityStanding(Ends ends, boolean byHand, Said centre, Fitted of) {
    if (!byHand && centre.isUnsaid()) {
      return Standing.open(centre);
    }
    for (PlugStates.Seen seen : states.pluggedIn()) {
      for (Chain chain : states.chains()) {
        if (!seen.shorts(chain) && ends.crossed(seen.joins(), chain.ends())) {
          return Standing.of("reversed");
        }
      }
    }
    return byHand ? Standing.FINE : marked(of.said("plug_centre"), centre);
  }

  /** A fitted plug's own word holds only if the charger has no other plug that says otherwise. */
  private static Standing marked(Said marked, Said centre) {
    if (marked.isUnsaid()) {
      return Standing.open(marked);
    }
    boolean contradicted = ChargingWay.isPole(marked) && !marked.is(centre.or(""));
    return contradicted ? Standing.of("plugs-differ") : Standing.FINE;
  }
}
