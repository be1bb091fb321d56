package outshop.sheets;

import static outshop.sheets.Steps.high;
import static outshop.sheets.Steps.low;
import static outshop.sheets.Steps.none;
import static outshop.sheets.Steps.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.ChargingWay;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Link;
import outshop.circuit.LoadCase;
import outshop.circuit.PackEnds;
import outshop.circuit.PackValues;
import outshop.circuit.State;
import outshop.circuit.Trial;
import outshop.figures.Bench;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.sheets.BenchSheet.Step;
import outshop.units.Amount;
import outshop.units.Unit;

/** The steps on the pack, and those with its charger. */
final class PackSteps {
  /** A lead that hangs free may show this much: from memory. */
  private static final double FLOATING_VOLTS = 0.1;

  /** A pack settles by so much after a charge: from memory. */
  private static final double SETTLED = 0.97;

  /** One run against the next, as one reading against the next. */
  private static final double SCATTER = 0.1;

  /** How far a cell may stand above its full volts: +/- 50 mV of lithium-ion; see Chemistry. */
  private static final double CELL_VOLTS_OVER = 0.05;

  private final Bench bench;
  private final Circuit circuit;
  private final PackEnds ends;
  private final PackValues pack;
  private final Steps steps = new Steps();

  private PackSteps(Bench bench, PackEnds ends, PackValues pack) {
    this.bench = bench;
    this.circuit = bench.circuit();
    this.ends = ends;
    this.pack = pack;
  }

  private static Optional<PackSteps> start(Bench bench) {
    return PackEnds.of(bench.circuit())
        .flatMap(ends -> bench.pack().map(pack -> new PackSteps(bench, ends, pack)));
  }

  static List<Step> of(Bench bench) {
    Optional<PackSteps> on = start(bench);
    on.ifPresent(PackSteps::alone);
    on.ifPresent(PackSteps::standing);
    on.ifPresent(PackSteps::running);
    return on.map(s -> s.steps.list()).orElse(List.of());
  }

  static List<Step> charging(Bench bench) {
    Optional<PackSteps> on = start(bench);
    if (on.isPresent() && bench.first(Kind.CHARGER).isPresent()) {
      on.get().charger(bench.first(Kind.CHARGER).get());
    }
    return on.map(s -> s.steps.list()).orElse(List.of());
  }

  private void alone() {
    String step = "pack-volts";
    steps.add(
        step,
        Line.of("{} alone, not joined: its volts, the right way round", own(pack.pack().name())),
        Steps.red(ends.plus(), ends.minus()),
        range(step, pack.emptyVolts(), pack.fullVolts()),
        low(
            "empty, a dead cell or a pack of fewer cells; a minus sign: its leads are crossed, do not join it"),
        high("a pack of more cells than planned: do not join it"),
        none("its own protection has opened, or its lead is broken"));
  }

  private static Expected range(String step, Amount low, Amount high) {
    return Meter.between(step, Unit.VOLTS, low, high);
  }

  private void standing() {
    Trials trials = Trials.of(bench);
    Trial onPack = trials.onPack();
    String step = "pack-idle-amps";
    steps.add(
        step,
        Line.of("Supply away, pack joined, silent, lamps dark, standing"),
        ammeter(),
        Meter.window(step, Unit.AMPS, bench.cases().run(onPack).fed()),
        low("receiver or decoder not joined"),
        high("compare with the reading on the supply and look for what has changed since"),
        none("fuse, switch, the pack's connector, or the pack's protection has opened"));
    LoadEnds.of(circuit)
        .ifPresent(
            load ->
                steps.add(
                    "pack-feed-volts",
                    Line.of("Meter out of the current's way, switch on, standing"),
                    Steps.red(load.plus(), load.minus()),
                    Meter.window(
                        "pack-feed-volts",
                        Unit.VOLTS,
                        bench.cases().run(onPack).volts(load.plus(), load.minus())),
                    low("a poor joint or contact in the feed, or a nearly empty pack"),
                    high("another pack than planned: switch off"),
                    none("open in the feed")));
  }

  /** A meter across an open switch needs no lead undone and no probe on the pack. */
  private Line ammeter() {
    Optional<Link> contact =
        LoadEnds.of(circuit)
            .flatMap(
                load ->
                    UnpoweredSteps.ways(bench)
                        .switchIn(circuit.running(), ends.plus(), load.plus())
                        .or(
                            () ->
                                UnpoweredSteps.ways(bench)
                                    .switchIn(circuit.running(), ends.minus(), load.minus())));
    return contact
        .map(
            link ->
                Line.of(
                    "ammeter, its highest range, across the switched-off {}: {} and {}",
                    own(Circuit.owner(link.from())),
                    own(link.from()),
                    own(link.to())))
        .orElse(Line.of("ammeter, its highest range, in the fused plus lead"));
  }

  /** As the report has it: every case with a train, from full to nearly empty. */
  private void running() {
    List<Amount> cases = new ArrayList<>();
    for (LoadCase.Charge charge : LoadCase.Charge.values()) {
      cases.add(
          bench
              .cases()
              .givenAmps(
                  new LoadCase(charge, LoadCase.Drive.CRUISING),
                  circuit.devices(Device.Sort.PACK).stream().map(Device::name).toList()));
    }
    String step = "running-amps";
    steps.add(
        step,
        Line.of("On the track with its usual train, lamps and sound on, at running speed"),
        Line.of("a logging meter in the fused plus lead, or as before with long leads"),
        Meter.between(
            step,
            Unit.AMPS,
            Cases.least(cases).times(1 - SCATTER, "least, scatter taken off", "x 0.9"),
            Cases.greatest(cases).times(1 + SCATTER, "most, with scatter", "x 1.1")),
        low("less train or slower than when it was measured: the run time is longer"),
        high("the drive binds or the train is heavier: measure again and check the plan with it"));
  }

  private void charger(Fitted charger) {
    String step = "charger-volts";
    steps.add(
        step,
        Line.of("{} alone, not plugged into the locomotive", own(charger.name())),
        Line.of(
            "red on its plus, black on its minus, {} and {}",
            own(charger.name() + ".plus"),
            own(charger.name() + ".minus")),
        Meter.window(step, Unit.VOLTS, charger.amount("charge_volts")),
        low("set for fewer cells; a minus sign: the plug's poles are crossed, do not plug it in"),
        high("set for more cells or another kind of cell: do not plug it in"),
        none("some chargers give nothing until they meet a pack; its maker's instructions tell"));
    State state = ChargingStates.charging(bench);
    boolean takenOut = ChargingWay.packTakenOut(bench.plan());
    LoadEnds.of(circuit)
        .filter(load -> !takenOut && !ChargingStates.loaded(circuit, state))
        .ifPresent(
            load ->
                steps.add(
                    "charging-load-volts",
                    chargingAct(state).and(Line.of("; the load must be dead")),
                    Steps.red(load.plus(), load.minus()),
                    Meter.window("charging-load-volts", 0, FLOATING_VOLTS, Unit.VOLTS),
                    high("the charger feeds the load: unplug it at once")));
    steps.add(
        "charging-volts",
        Line.of("Charging, after a few minutes, and again now and then: the pack's volts, rising"),
        Line.of("where the pack is joined: {} and {}", own(ends.plus()), own(ends.minus())),
        range("charging-volts", pack.emptyVolts(), charger.amount("charge_volts")),
        low(
            "a dead cell, or an empty pack: stop; a lithium pack below its lowest volts is not charged again"),
        high("stop at once: the charger does not suit the pack"));
    Amount full = pack.fullVolts();
    steps.add(
        "charged-volts",
        Line.of("Charger says full, plug out, pack at rest for a while"),
        Line.of("where the pack is joined: {} and {}", own(ends.plus()), own(ends.minus())),
        range(
            "charged-volts",
            full.times(SETTLED, "full, settled", "full volts x 0.97"),
            Amount.computed(
                "full, at most",
                Unit.VOLTS,
                "full volts + 50 mV a cell",
                v -> v[0] + CELL_VOLTS_OVER * v[1],
                full,
                pack.cells())),
        low("the charger ended early, or the pack is worn"),
        high("do not use charger and pack together again until it is cleared up"));
  }

  private Line chargingAct(State state) {
    Plan plan = bench.plan();
    Line set = UnpoweredSteps.ways(bench).words(state, state.switches().keySet());
    return plan.parts(Kind.JACK).isEmpty()
        ? Line.of("Charger on")
        : Line.of("Pack in, charger on and watched: ").and(set);
  }
}
