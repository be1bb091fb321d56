package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.circuit.State;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** Packs that lie side by side in some state, each pair once. */
final class PackPairFigures {
  private final Circuit circuit;

  /** What draws or brings current wherever a wire meets it: devices, and jacks. */
  private final Set<String> meetingPlaces;

  private PackPairFigures(Bench bench) {
    circuit = bench.circuit();
    meetingPlaces =
        Stream.concat(
                circuit.devices().stream().map(Device::name),
                bench.plan().parts(Kind.JACK).stream().map(Fitted::name))
            .collect(Collectors.toUnmodifiableSet());
  }

  static List<Object> of(Bench bench) {
    PackPairFigures figures = new PackPairFigures(bench);
    List<Fitted> packs = bench.plan().parts(Kind.PACK);
    List<Object> facts = new ArrayList<>();
    for (int i = 0; i < packs.size(); i++) {
      for (int j = i + 1; j < packs.size(); j++) {
        Fitted one = packs.get(i);
        Fitted other = packs.get(j);
        figures
            .sideBySide(one, other)
            .ifPresent(joins -> facts.add(figures.pair(joins, one, other)));
      }
    }
    return facts;
  }

  /** What is joined in the first state in which plus meets plus and minus meets minus. */
  private Optional<Joins> sideBySide(Fitted one, Fitted other) {
    for (State state : circuit.states()) {
      Joins joins = new Joins(circuit, state);
      if (poles(one).rightly(joins, poles(other))) {
        return Optional.of(joins);
      }
    }
    return Optional.empty();
  }

  private static Ends poles(Fitted pack) {
    return new Ends(pack.name() + ".plus", pack.name() + ".minus");
  }

  private PackPair pair(Joins joins, Fitted one, Fitted other) {
    PackValues here = PackValues.of(one);
    PackValues there = PackValues.of(other);
    return new PackPair(
        Places.of(one),
        other.name(),
        one.said("chemistry"),
        other.said("chemistry"),
        here.cells(),
        there.cells(),
        alike(one, other, here.cells(), there.cells()),
        fused(joins, one, other),
        cross("both full", here, here.fullVolts(), there, there.fullVolts()),
        Cases.greatest(
            List.of(
                cross(one.name() + " full", here, here.fullVolts(), there, there.emptyVolts()),
                cross(other.name() + " full", there, there.fullVolts(), here, here.emptyVolts()))),
        Cases.least(List.of(one.amount("max_charge_amps"), other.amount("max_charge_amps"))));
  }

  private static Standing alike(Fitted one, Fitted other, Amount here, Amount there) {
    Said cells = one.said("chemistry");
    Said others = other.said("chemistry");
    if (!cells.isUnsaid() && !others.isUnsaid() && !cells.is(others.or(""))) {
      return Standing.of("chemistry");
    }
    if (here.isKnown() && there.isKnown() && !Exact.same(here.get().value(), there.get().value())) {
      return Standing.of("cells");
    }
    List<Want> wants = new ArrayList<>(Standing.wants(cells, others));
    wants.addAll(Standing.wants(here, there));
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  private Standing fused(Joins joins, Fitted one, Fitted other) {
    List<Want> wants = new ArrayList<>();
    for (List<Fitted> way : List.of(List.of(one, other), List.of(other, one))) {
      Amount inside = way.get(0).amount("internal_fuse_amps");
      if (!branchFused(joins, poles(way.get(0)), poles(way.get(1)))) {
        if (inside.isAbsent()) {
          return Standing.of("unfused");
        }
        wants.addAll(Standing.wants(inside));
      }
    }
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  /** Whether a fuse in either lead of a pack comes before the joint with anything else. */
  private boolean branchFused(Joins joins, Ends pack, Ends other) {
    return fuseBeforeJoint(joins, pack.plus(), other.plus())
        || fuseBeforeJoint(joins, pack.minus(), other.minus());
  }

  private boolean fuseBeforeJoint(Joins joins, String from, String to) {
    String at = from;
    for (Link link : joins.way(from, to).orElse(List.of())) {
      if (isJoint(joins, at, from)) {
        return false;
      }
      if (link.sort() == Link.Sort.FUSE) {
        return true;
      }
      at = link.from().equals(at) ? link.to() : link.from();
    }
    return false;
  }

  /** Whether something else than the way from the pack's pole meets at a terminal. */
  private boolean isJoint(Joins joins, String terminal, String pole) {
    if (terminal.equals(pole)) {
      return degree(joins, terminal) > 1;
    }
    String owner = terminal.substring(0, Math.max(0, terminal.indexOf('.')));
    return meetingPlaces.contains(owner) || degree(joins, terminal) > 2;
  }

  private static long degree(Joins joins, String terminal) {
    return joins.closed().stream()
        .filter(link -> link.from().equals(terminal) || link.to().equals(terminal))
        .count();
  }

  private static Amount cross(
      String when, PackValues from, Amount fromVolts, PackValues to, Amount toVolts) {
    return Amount.computed(
        "current between " + from.pack().name() + " and " + to.pack().name() + ", " + when,
        Unit.AMPS,
        "difference of their volts / sum of their resistances",
        v -> Math.abs(v[0] - v[1]) / (v[2] + v[3]),
        fromVolts,
        toVolts,
        from.ohms(),
        to.ohms());
  }
}
