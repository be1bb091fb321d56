package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Gauge;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Unit;
import outshop.units.Want;

/** Wires by their size: in the contacts they end in, and under the sleeves over their joints. */
final class WireFitFigures {
  /** Parts whose data say which wires their contacts take. */
  private static final List<Kind> TAKERS = List.of(Kind.CONNECTOR, Kind.RECEIVER, Kind.DECODER);

  private final Bench bench;
  private final List<Link> wires;

  private WireFitFigures(Bench bench) {
    this.bench = bench;
    this.wires = bench.circuit().links().stream().filter(l -> l.sort() == Link.Sort.WIRE).toList();
  }

  static List<Object> of(Bench bench) {
    WireFitFigures figures = new WireFitFigures(bench);
    List<Object> facts = new ArrayList<>();
    for (Kind kind : TAKERS) {
      bench.plan().parts(kind).forEach(p -> facts.addAll(figures.contacts(p)));
    }
    facts.addAll(figures.sleeves());
    return facts;
  }

  /** One fact for each sort of wire that ends at a part. */
  private List<ContactFit> contacts(Fitted part) {
    Map<Object, ContactFit> bySort = new LinkedHashMap<>();
    for (Link wire : wires) {
      if (WiringFigures.ends(wire, part.name())) {
        bySort.computeIfAbsent(sort(wire.part()), s -> fit(part, wire));
      }
    }
    return List.copyOf(bySort.values());
  }

  private static ContactFit fit(Fitted part, Link wire) {
    boolean connector = part.is(Kind.CONNECTOR);
    return new ContactFit(
        Places.of(part),
        wire.name(),
        gauge(wire.part()),
        part.amount("wire_min_awg"),
        part.amount("wire_max_awg"),
        wire.part().map(w -> w.amount("insulation_outer_mm")).orElseGet(WireFitFigures::unchosen),
        connector ? part.amount("insulation_max_mm") : new Amount.Absent("insulation"));
  }

  /** Wires of the same make count once. */
  static Object sort(Optional<Fitted> wire) {
    return wire.map(w -> List.of(w.part().numbers(), w.part().words())).orElse(List.of());
  }

  private static Amount unchosen() {
    return Amount.missing("wiring", "wire", "choose the wire; its gauge is printed on its reel");
  }

  /** A wire's gauge; of one that is sold by area, the gauge of that area, with its fraction. */
  static Amount gauge(Optional<Fitted> wire) {
    if (wire.isEmpty()) {
      return unchosen();
    }
    Amount awg = wire.get().amount("awg");
    Amount area = wire.get().amount("area_mm2");
    return awg.isKnown() || !area.isKnown()
        ? awg
        : Amount.computed(
            wire.get().name() + ": gauge",
            Unit.GAUGE,
            "the gauge of its cross-section, ASTM B258",
            v -> gaugeOf(v[0]),
            area);
  }

  /** The inverse of {@link Gauge#areaMm2}: {@code 36 - 39 log(d / 0.127 mm) / log 92}. */
  static double gaugeOf(double areaMm2) {
    double diameter = Math.sqrt(4 * areaMm2 / Math.PI);
    return 36 - 39 * Math.log(diameter / 0.127) / Math.log(92);
  }

  private List<SleeveFit> sleeves() {
    List<Fitted> sleeves = bench.plan().parts(Kind.SLEEVE);
    Map<Object, SleeveFit> bySort = new LinkedHashMap<>();
    if (!sleeves.isEmpty()) {
      for (Link wire : wires) {
        wire.part()
            .ifPresent(w -> bySort.computeIfAbsent(sort(wire.part()), s -> sleeve(w, sleeves)));
      }
    }
    return List.copyOf(bySort.values());
  }

  private static SleeveFit sleeve(Fitted wire, List<Fitted> sleeves) {
    Joint joint = Joint.of(wire);
    At at = new At(Station.WIRING, wire.name(), wire.described());
    return new SleeveFit(
        at,
        joint.across(),
        joint.insulation(),
        standing(joint.across(), joint.insulation(), sleeves));
  }

  /** Whether a sleeve passes over the joint, and shrinks down onto the wire. */
  private static Standing standing(Amount joint, Amount insulation, List<Fitted> sleeves) {
    List<Want> wants = new ArrayList<>(Standing.wants(joint));
    boolean someWide = false;
    for (Fitted sleeve : sleeves) {
      Amount supplied = sleeve.amount("supplied_bore_mm");
      Amount recovered = sleeve.amount("recovered_bore_mm");
      if (isBelow(supplied, joint)) {
        continue;
      }
      someWide |= supplied.isKnown();
      if (isBelow(insulation, recovered)) {
        continue;
      }
      List<Want> own = Standing.wants(supplied, recovered);
      if (own.isEmpty() && wants.isEmpty()) {
        return Standing.FINE;
      }
      wants.addAll(own);
    }
    if (!wants.isEmpty()) {
      return Standing.open(wants);
    }
    return Standing.of(someWide ? "stays-loose" : "too-narrow");
  }

  private static boolean isBelow(Amount one, Amount other) {
    return one instanceof Amount.Known a
        && other instanceof Amount.Known b
        && Exact.below(a.value(), b.value());
  }
}
