package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.circuit.Cases;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.PackValues;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * Prospective short-circuit currents: pack volts / (pack's resistance + resistance of the way there
 * and back), by Ohm's law. The least that must still open a fuse flows at the far end with the pack
 * nearly empty; the most that a fuse must break flows at the pack's terminals with the pack full.
 */
final class ShortCurrents {
  private final Bench bench;
  private final List<InState> states;

  ShortCurrents(Bench bench, List<InState> states) {
    this.bench = bench;
    this.states = states;
  }

  /**
   * A short at the end of a feed.
   *
   * @param end the part whose terminals are shorted
   * @param amps through the fuse; absent where no feed leads through it
   */
  record AtEnd(String end, Amount amps) {}

  /** The least short current through a fuse: the worst feed in any state, pack nearly empty. */
  AtEnd least(FuseSeat seat) {
    Map<String, Set<Set<Link>>> loops = new LinkedHashMap<>();
    for (InState in : states) {
      for (Feedpoint point : points()) {
        loop(in.joins(), seat, point)
            .ifPresent(
                loop -> loops.computeIfAbsent(point.name(), n -> new LinkedHashSet<>()).add(loop));
      }
    }
    List<AtEnd> all = new ArrayList<>();
    loops.forEach(
        (end, ways) -> ways.forEach(way -> all.add(new AtEnd(end, amps(seat.pack(), end, way)))));
    if (all.isEmpty()) {
      return new AtEnd("", new Amount.Absent("a feed through " + seat.fuse().name()));
    }
    Amount least = Cases.least(all.stream().map(AtEnd::amps).toList());
    return all.stream()
        .filter(a -> a.amps() == least)
        .findFirst()
        .orElse(new AtEnd("the far end", least));
  }

  /** The most that a fuse may have to break, in amps: every pack that feeds it, full. */
  Amount most(FuseSeat seat) {
    List<Amount> each =
        seat.feeders(bench, states).stream()
            .map(PackValues::of)
            .map(
                pack ->
                    Amount.computed(
                        "short at " + pack.pack().name() + "'s terminals, pack full",
                        Unit.AMPS,
                        "pack full / internal resistance",
                        v -> v[0] / v[1],
                        pack.fullVolts(),
                        pack.ohms()))
            .toList();
    return each.size() == 1
        ? each.get(0)
        : Amount.sum("short at the packs' terminals, packs full", Unit.AMPS, each);
  }

  private static Amount amps(Fitted fitted, String end, Set<Link> way) {
    PackValues pack = PackValues.of(fitted);
    Amount wayOhms =
        Amount.sum("way to " + end + " and back", Unit.OHMS, way.stream().map(Link::ohms).toList());
    return Amount.computed(
        "short at " + end + ", pack nearly empty",
        Unit.AMPS,
        "pack empty / (internal resistance + way there and back)",
        v -> v[0] / (v[1] + v[2]),
        pack.emptyVolts(),
        pack.ohms(),
        wayOhms);
  }

  /** Two terminals at which a feed ends and could be shorted. */
  private record Feedpoint(String name, String one, String other) {}

  private List<Feedpoint> points() {
    List<Feedpoint> points = new ArrayList<>();
    for (Fitted part : bench.plan().parts()) {
      switch (part.kind()) {
        case JACK -> points.add(point(part, "pin", "sleeve"));
        case RECEIVER, REGULATOR -> points.add(point(part, "in+", "in-"));
        case DECODER -> points.add(point(part, "in-a", "in-b"));
        default -> {
          // No feed ends there.
        }
      }
    }
    return points;
  }

  private static Feedpoint point(Fitted part, String one, String other) {
    return new Feedpoint(part.name(), part.name() + "." + one, part.name() + "." + other);
  }

  /** The conductors of the way from the pack to a point and back, if it leads through the fuse. */
  private static Optional<Set<Link>> loop(Joins joins, FuseSeat seat, Feedpoint point) {
    Optional<Set<Link>> straight = loop(joins, seat, point.one(), point.other());
    return straight.isPresent() ? straight : loop(joins, seat, point.other(), point.one());
  }

  private static Optional<Set<Link>> loop(Joins joins, FuseSeat seat, String plus, String minus) {
    Optional<List<Link>> out = joins.way(seat.pack().name() + ".plus", plus);
    Optional<List<Link>> back = joins.way(seat.pack().name() + ".minus", minus);
    if (out.isEmpty() || back.isEmpty()) {
      return Optional.empty();
    }
    Set<Link> loop = new LinkedHashSet<>(out.get());
    loop.addAll(back.get());
    return loop.contains(seat.link()) ? Optional.of(loop) : Optional.empty();
  }
}
