package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.LoadCase;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * Short overloads of a fuse, starting and stalling, against the time its standard lets it hold
 * them. A start is judged where its surge was logged; else it is covered by the stall, which no
 * start exceeds.
 */
final class FuseSurges {
  /** How long wheels stay blocked until the throttle is closed. Common practice, no source. */
  private static final double STALL_SECONDS = 5;

  /** Any fuse carries its rated current for so long; used only where its standard is not stated. */
  private static final double HOLDS_RATED_SECONDS = 3600;

  private static final LoadCase STANDING =
      new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING);
  private static final LoadCase MOVING =
      new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.SLIPPING);

  private final Bench bench;

  FuseSurges(Bench bench) {
    this.bench = bench;
  }

  List<FuseSurge> of(FuseSeat seat) {
    List<FuseSurge> surges = new ArrayList<>();
    Amount blocked = bench.cases().blockedAmps(seat.fuse().name());
    if (seat.resettable() || !FuseFigures.flows(blocked)) {
      return surges;
    }
    Amount stall =
        Plan.fixed(
            STALL_SECONDS, Unit.SECONDS, "longest usual stall", "common practice, no source");
    surges.add(surge(seat, "with the wheels blocked", blocked, stall));
    if (anyStartLogged()) {
      surges.add(surge(seat, "at a start", startAmps(seat), startLasts()));
    }
    return surges;
  }

  private static FuseSurge surge(FuseSeat seat, String doing, Amount amps, Amount lasts) {
    return new FuseSurge(seat.at(), doing, amps, lasts, holds(seat, doing, amps, lasts));
  }

  private boolean anyStartLogged() {
    return Stream.of("start_surge", "start_surge_lasts")
        .flatMap(key -> ofMotors(key).stream())
        .anyMatch(Amount::isKnown);
  }

  private List<Amount> ofMotors(String key) {
    return bench.plan().names("locomotive.motors").stream()
        .map(motor -> bench.plan().amount("locomotive.motors." + motor + "." + key))
        .toList();
  }

  private Amount startLasts() {
    return Cases.greatest(ofMotors("start_surge_lasts"));
  }

  /** The motors' surges on top of what the fuse carries standing; of several packs, its share. */
  private Amount startAmps(FuseSeat seat) {
    String fuse = seat.fuse().name();
    Amount surge = Amount.sum("start surge of the motors", Unit.AMPS, ofMotors("start_surge"));
    Amount packs =
        Amount.sum(
            "all packs, " + MOVING.words(),
            Unit.AMPS,
            bench.plan().parts(Kind.PACK).stream()
                .map(p -> bench.cases().amps(MOVING, p.name()))
                .toList());
    return Amount.computed(
        fuse + ", starting",
        Unit.AMPS,
        "standing + surge x the fuse's share of the packs' current",
        v -> v[3] == 0 ? v[0] : v[0] + v[1] * v[2] / v[3],
        bench.cases().amps(STANDING, fuse),
        surge,
        bench.cases().amps(MOVING, fuse),
        packs);
  }

  /**
   * How long the fuse holds this current by its standard, in seconds. Where the standard promises
   * nothing: the time in which it must have opened, if the current lasts longer; else missing.
   */
  private static Amount holds(FuseSeat seat, String doing, Amount amps, Amount lasts) {
    Fitted fuse = seat.fuse();
    Amount rated = seat.ratedAmps();
    Said standard = fuse.said("gate");
    Optional<FuseGates> gates = FuseGates.of(standard.or(""));
    if (gates.isEmpty()) {
      return withoutGates(fuse, doing, amps, rated, standard);
    }
    Amount shortest =
        Amount.computed(
            "time " + fuse.name() + " holds, " + doing,
            Unit.SECONDS,
            "shortest opening time in " + standard.or("") + " at current / rating",
            v -> gates.get().shortestSeconds(v[0] / v[1]),
            amps,
            rated);
    boolean promised = !(shortest instanceof Amount.Known k) || k.value() > 0;
    return promised ? shortest : longest(fuse, doing, amps, rated, lasts, gates.get());
  }

  private static Amount withoutGates(
      Fitted fuse, String doing, Amount amps, Amount rated, Said standard) {
    boolean within =
        amps instanceof Amount.Known a
            && rated instanceof Amount.Known r
            && !Exact.above(a.high(), r.low());
    if (within) {
      return Plan.fixed(
          HOLDS_RATED_SECONDS,
          Unit.SECONDS,
          "time " + fuse.name() + " holds, " + doing,
          "any fuse carries its rated current");
    }
    return standard instanceof Said.Unsaid unsaid
        ? new Amount.Missing(List.of(unsaid.want()))
        : noPromise(fuse);
  }

  private static Amount longest(
      Fitted fuse, String doing, Amount amps, Amount rated, Amount lasts, FuseGates gates) {
    Amount longest =
        Amount.computed(
            "time in which " + fuse.name() + " has opened, " + doing,
            Unit.SECONDS,
            "longest opening time in its standard at current / rating",
            v -> gates.longestSeconds(v[0] / v[1]),
            amps,
            rated);
    boolean surelyOpens =
        lasts instanceof Amount.Known l && Exact.above(l.value(), longest.get().value());
    return surelyOpens ? longest : noPromise(fuse);
  }

  private static Amount.Missing noPromise(Fitted fuse) {
    return Amount.missing(
        fuse.name(),
        "shortest opening time",
        "the time-current curve in its data sheet: its standard promises none at this current");
  }
}
