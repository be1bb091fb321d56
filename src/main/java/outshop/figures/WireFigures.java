package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Gauge;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.SpeakerValues;
import outshop.circuit.WireValues;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;

/** Amps through the wires: of each gauge the busiest, running, charging and to the speakers. */
final class WireFigures {
  private final Bench bench;
  private final Demands demands;

  private WireFigures(Bench bench, Demands demands) {
    this.bench = bench;
    this.demands = demands;
  }

  /** A conductor that stands for all of its gauge. */
  private record Conductor(Link link, String gauge, Amount ampacityAmps, boolean ofCable) {}

  /** What a conductor carries at one time. */
  private record Flow(Conductor conductor, Amount amps, String when) {}

  static List<Object> of(Bench bench, Demands demands) {
    WireFigures figures = new WireFigures(bench, demands);
    List<Object> facts = new ArrayList<>();
    figures.byGauge().values().forEach(conductors -> facts.addAll(figures.loads(conductors)));
    return facts;
  }

  /** The busiest of a gauge as far as is known, and what is missing to know of the others. */
  private List<WireLoad> loads(List<Conductor> conductors) {
    List<Flow> known = new ArrayList<>();
    List<Flow> unknown = new ArrayList<>();
    for (Conductor conductor : conductors) {
      for (Flow flow : flows(conductor)) {
        if (flow.amps().isMissing()) {
          unknown.add(flow);
        } else if (flow.amps().isKnown() && !Demands.isNothing(flow.amps())) {
          known.add(flow);
        }
      }
    }
    List<WireLoad> loads = new ArrayList<>();
    if (!known.isEmpty()) {
      loads.add(busiest(known));
    }
    if (!unknown.isEmpty()) {
      Amount missing = Cases.greatest(unknown.stream().map(Flow::amps).toList());
      loads.add(load(unknown.get(0), missing));
    }
    return loads;
  }

  private List<Flow> flows(Conductor conductor) {
    return List.of(
        new Flow(conductor, demands.sustained(conductor.link().name()), "running"),
        new Flow(conductor, demands.charging(conductor.link()), "charging"),
        new Flow(conductor, speakerAmps(conductor), "at full volume"));
  }

  /** The first that carries as much as any, so that rounding never decides which is named. */
  private static WireLoad busiest(List<Flow> flows) {
    Amount.Known most = Cases.greatest(flows.stream().map(Flow::amps).toList()).get();
    for (Flow flow : flows) {
      Amount.Known own = flow.amps().get();
      if (Exact.same(own.value(), most.value())) {
        boolean alone = Exact.same(own.low(), most.low()) && Exact.same(own.high(), most.high());
        return load(flow, alone ? own : most.named(own.label()));
      }
    }
    throw new IllegalStateException("the greatest of some currents is none of them");
  }

  private static WireLoad load(Flow flow, Amount amps) {
    Conductor conductor = flow.conductor();
    String solved = Demands.when(amps);
    return new WireLoad(
        conductor.ofCable()
            ? Places.of(conductor.link().part().orElseThrow())
            : Places.wire(conductor.link().name()),
        conductor.gauge(),
        amps,
        solved.isEmpty() ? flow.when() : solved,
        conductor.ampacityAmps());
  }

  private Map<String, List<Conductor>> byGauge() {
    Map<String, List<Conductor>> gauges = new LinkedHashMap<>();
    for (Link link : bench.circuit().links()) {
      boolean cable = link.part().filter(p -> p.is(Kind.CABLE)).isPresent();
      if (link.sort() == Link.Sort.WIRE || cable) {
        Conductor conductor = conductor(link, cable);
        gauges.computeIfAbsent(conductor.gauge(), g -> new ArrayList<>()).add(conductor);
      }
    }
    return gauges;
  }

  private static Conductor conductor(Link link, boolean cable) {
    if (link.part().isEmpty()) {
      Amount unknown =
          Amount.missing(
              "wiring", "wire", "choose the wire; its gauge is printed on it or on its reel");
      return new Conductor(link, "wire of no stated gauge", unknown, false);
    }
    Fitted part = link.part().get();
    if (cable) {
      Amount awg = part.amount("wire_awg");
      return new Conductor(link, gauge(awg, part), ampacity(part, awg), true);
    }
    Amount awg = part.amount("awg");
    Amount size = awg.isKnown() ? awg : part.amount("area_mm2");
    return new Conductor(link, gauge(size, part), WireValues.chassisAmps(part), false);
  }

  private static String gauge(Amount size, Fitted part) {
    return size instanceof Amount.Known k
        ? AmountText.text(k)
        : part.name() + " of no stated gauge";
  }

  /** The chassis ampacity of a cable's conductors, as {@link WireValues} has it for wires. */
  private static Amount ampacity(Fitted cable, Amount awg) {
    if (awg instanceof Amount.Known k && Gauge.chassisAmps((int) Math.round(k.value())).isEmpty()) {
      return Amount.missing(
          cable.name(), "ampacity", "the cable maker's table: the published one ends at 32 AWG");
    }
    return Amount.computed(
        cable.name() + ": chassis ampacity",
        Unit.AMPS,
        "published table by gauge",
        v -> Gauge.chassisAmps((int) Math.round(v[0])).orElseThrow(),
        awg);
  }

  /**
   * The current of a speaker's own lead at the amplifier's full power, root mean square: {@code
   * sqrt(power x impedance) / own impedance} side by side, {@code sqrt(power / impedance)} in
   * series. The circuit is solved for direct current, so it knows nothing of it.
   */
  private Amount speakerAmps(Conductor conductor) {
    Link link = conductor.link();
    Amount none = new Amount.Absent(link.name());
    List<Fitted> decoders = bench.plan().parts(Kind.DECODER);
    if (decoders.isEmpty()) {
      return none;
    }
    Said sound = decoders.get(0).said("sound");
    if (sound.isNot("yes")) {
      return none;
    }
    SpeakerValues speakers = SpeakerValues.of(bench.plan());
    for (SpeakerValues.Member member : speakers.members()) {
      String terminal = member.name() + ".";
      if (link.from().startsWith(terminal) || link.to().startsWith(terminal)) {
        return sound instanceof Said.Unsaid unsaid
            ? new Amount.Missing(List.of(unsaid.want()))
            : speakerAmps(speakers, member, decoders.get(0));
      }
    }
    return none;
  }

  private Amount speakerAmps(SpeakerValues speakers, SpeakerValues.Member member, Fitted decoder) {
    boolean series = bench.plan().said("speakers.join").is("series");
    return Amount.computed(
        member.name() + ": current at full volume",
        Unit.AMPS,
        series ? "sqrt(power / impedance)" : "sqrt(power x combined impedance) / own impedance",
        v -> series ? Math.sqrt(v[0] / v[1]) : Math.sqrt(v[0] * v[1]) / v[2],
        speakers.amplifierWatts(decoder),
        speakers.ohms(),
        member.ohms());
  }
}
