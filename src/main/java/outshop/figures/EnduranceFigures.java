package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.LoadCase;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Unit;
import outshop.units.Want;

/** How long a charge lasts: running, in the cold, and left on. */
final class EnduranceFigures {
  /** Share of the capacity that is counted on, with its range: common practice, no source. */
  private static final double[] USABLE = {0.8, 0.7, 0.9};

  /** What is left of the capacity at 0 degrees Celsius: common practice, no source. */
  private static final double COLD_SHARE = 0.8;

  private static final double HOURS_A_DAY = 24;

  static final Pieces<EnduranceFigures> PIECES =
      new Pieces<>(
          EnduranceFigures::new, List.of(EnduranceFigures::runTimes, EnduranceFigures::leftOn));

  private final Bench bench;
  private final Plan plan;
  private final List<Chain> chains;

  private EnduranceFigures(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
    this.chains = Chain.of(bench);
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private List<RunTime> runTimes() {
    if (chains.isEmpty()) {
      return List.of();
    }
    Amount mean = meanAmps();
    Amount hours = hours(mean);
    Amount cold =
        hours.times(COLD_SHARE, "run time at 0 °C", "run time x 0.8, as the capacity shrinks");
    return List.of(
        new RunTime(Places.of(pack()), mean, hours, cold, plan.amount("wishes.running")));
  }

  private List<?> leftOn() {
    return chains.isEmpty() ? List.of() : List.of(leftOn(pack()));
  }

  private Fitted pack() {
    return chains.get(0).packs().get(0);
  }

  private Amount hours(Amount meanAmps) {
    return Amount.computed(
        "run time",
        Unit.HOURS,
        "capacity x usable share / mean current",
        v -> v[0] * v[1] / v[2],
        capacity(),
        usable(),
        meanAmps);
  }

  /** What a charge gives, in ampere-hours; absent without a pack. */
  static Amount usableCharge(Bench bench) {
    EnduranceFigures figures = new EnduranceFigures(bench);
    return figures.chains.isEmpty()
        ? new Amount.Absent("pack")
        : Amount.computed(
            "usable charge",
            Unit.AMPERE_HOURS,
            "capacity x usable share",
            v -> v[0] * v[1],
            figures.capacity(),
            figures.usable());
  }

  /** Run times at other duties than the one asked for; none without a pack. */
  static List<DutyTime> duties(Bench bench) {
    EnduranceFigures figures = new EnduranceFigures(bench);
    List<DutyTime> duties = new ArrayList<>();
    if (!figures.chains.isEmpty()) {
      Amount cruising = figures.ampsAlways(LoadCase.Drive.CRUISING);
      Amount slipping = figures.ampsAlways(LoadCase.Drive.SLIPPING);
      Amount half =
          Amount.computed(
              "mean current, half cruising and half slipping",
              Unit.AMPS,
              "mean of the two currents",
              v -> (v[0] + v[1]) / 2,
              cruising,
              slipping);
      Amount standing = figures.ampsAlways(LoadCase.Drive.STANDING);
      duties.add(figures.duty(DutyTime.Duty.STANDING, standing));
      duties.add(figures.duty(DutyTime.Duty.CRUISING, cruising));
      duties.add(figures.duty(DutyTime.Duty.HALF_AND_HALF, half));
      duties.add(figures.duty(DutyTime.Duty.SLIPPING, slipping));
    }
    return duties;
  }

  /**
   * The mean current at which a charge lasts as long as is asked, in amps; absent without a pack.
   */
  static Amount allowedAmps(Bench bench) {
    EnduranceFigures figures = new EnduranceFigures(bench);
    if (figures.chains.isEmpty()) {
      return new Amount.Absent("pack");
    }
    return Amount.computed(
        "mean current that the wish allows",
        Unit.AMPS,
        "capacity x usable share / hours asked for",
        v -> v[0] * v[1] / v[2],
        figures.capacity(),
        figures.usable(),
        figures.plan.amount("wishes.running"));
  }

  private DutyTime duty(DutyTime.Duty duty, Amount amps) {
    return new DutyTime(duty, amps, hours(amps));
  }

  private Amount ampsAlways(LoadCase.Drive drive) {
    Flows flows = Flows.of(bench);
    List<String> packs = chains.stream().map(c -> c.packs().get(0).name()).toList();
    Amount nothingFlows = flows.amps(drive, packs.get(0));
    return nothingFlows.isMissing()
        ? nothingFlows
        : bench.cases().givenAmps(new LoadCase(LoadCase.Charge.NOMINAL, drive), packs);
  }

  /** Packs in series give the charge of the smallest, packs side by side that of all. */
  private Amount capacity() {
    List<Amount> each = new ArrayList<>();
    for (Chain chain : chains) {
      each.add(Cases.least(chain.packs().stream().map(p -> p.amount("capacity_ah")).toList()));
    }
    return each.size() == 1
        ? each.get(0)
        : Amount.sum("capacity of all packs", Unit.AMPERE_HOURS, each);
  }

  private Amount usable() {
    return plan.amount("measured.usable")
        .orElse(
            Amount.assumed(
                USABLE[0],
                USABLE[1],
                USABLE[2],
                Unit.SHARE,
                "measured: usable",
                "not stated; usual share of the capacity that is counted on"));
  }

  /** As logged; else from the solved cases at nominal volts, each by its share of the time. */
  private Amount meanAmps() {
    Amount logged = plan.amount("measured.average");
    if (logged.isKnown()) {
      return logged.named("mean current, as logged");
    }
    List<LoadCase.Drive> drives =
        List.of(LoadCase.Drive.STANDING, LoadCase.Drive.CRUISING, LoadCase.Drive.SLIPPING);
    List<Amount> parts = new ArrayList<>();
    for (LoadCase.Drive drive : drives) {
      Amount share = share(drive, drives);
      parts.add(
          Amount.computed(
              "share of the mean current, " + drive.words(),
              Unit.AMPS,
              "share of the time x current",
              v -> v[0] * v[1],
              share,
              amps(share, drive)));
    }
    return Amount.sum("mean current", Unit.AMPS, parts);
  }

  /** As stated; a single one that is not is what the others leave of the whole. */
  private Amount share(LoadCase.Drive drive, List<LoadCase.Drive> all) {
    Amount stated = share(drive);
    Amount rest =
        Amount.computed(
            "share of the time, " + drive.words(),
            Unit.SHARE,
            "what the other shares leave",
            v -> 1 - v[0] - v[1],
            all.stream().filter(d -> d != drive).map(this::share).toList());
    boolean possible = rest instanceof Amount.Known k && !Exact.below(k.value(), 0);
    return stated.isMissing() && possible ? rest : stated;
  }

  private Amount share(LoadCase.Drive drive) {
    return plan.amount("wishes.duty." + drive.name().toLowerCase(Locale.ROOT));
  }

  /** What the packs give; nothing is asked of a case that takes no time. */
  private Amount amps(Amount share, LoadCase.Drive drive) {
    String label = "current, " + drive.words();
    if (share instanceof Amount.Known k && Exact.same(k.value(), 0)) {
      return Plan.fixed(0, Unit.AMPS, label, "takes no share of the time");
    }
    return bench
        .cases()
        .givenAmps(
            new LoadCase(LoadCase.Charge.NOMINAL, drive),
            chains.stream().map(c -> c.packs().get(0).name()).toList());
  }

  private LeftOn leftOn(Fitted pack) {
    Amount days =
        Amount.computed(
            "left on until flat",
            Unit.DAYS,
            "capacity / standby current / 24 hours",
            v -> v[0] / v[1] / HOURS_A_DAY,
            capacity(),
            standbyAmps());
    return new LeftOn(Places.of(pack), days, drained(days));
  }

  /** A chain is let go by the first of its packs that cuts off; every chain must be let go. */
  private Standing drained(Amount days) {
    List<Want> wants = new ArrayList<>();
    boolean open = false;
    for (Chain chain : chains) {
      List<Amount> cutoffs = chain.packs().stream().map(p -> p.amount("cutoff_volts")).toList();
      if (cutoffs.stream().noneMatch(Amount::isKnown)) {
        wants.addAll(Standing.wants(cutoffs.toArray(new Amount[0])));
        open |= cutoffs.stream().allMatch(Amount::isAbsent);
      }
    }
    if (open) {
      return days.isKnown() ? Standing.of("drained") : Standing.open(Standing.wants(days));
    }
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  /** Silent, lamps off, motor off: the electronics, and what the packs draw themselves. */
  private Amount standbyAmps() {
    List<Amount> draws = new ArrayList<>();
    Amount electronics = plan.amount("measured.electronics");
    if (electronics.isKnown()) {
      draws.add(electronics);
    } else {
      for (Kind kind : List.of(Kind.RECEIVER, Kind.DECODER)) {
        plan.parts(kind).forEach(p -> draws.add(p.amount("own_milliamps")));
      }
    }
    for (Kind kind : List.of(Kind.REGULATOR, Kind.PACK)) {
      plan.parts(kind).forEach(p -> draws.add(p.amount("own_milliamps")));
    }
    return Amount.sum("standby current", Unit.AMPS, draws);
  }
}
