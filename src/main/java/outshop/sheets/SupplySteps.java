package outshop.sheets;

import static outshop.sheets.Steps.high;
import static outshop.sheets.Steps.low;
import static outshop.sheets.Steps.none;
import static outshop.sheets.Steps.own;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import outshop.catalogue.Kind;
import outshop.circuit.ChargingWay;
import outshop.circuit.Device;
import outshop.circuit.PackEnds;
import outshop.circuit.State;
import outshop.circuit.Trial;
import outshop.figures.Bench;
import outshop.sheets.BenchSheet.Step;
import outshop.units.Amount;
import outshop.units.Unit;

/** The steps on a current-limited bench supply that stands in for the pack. */
final class SupplySteps {
  /** Room above what is expected, so that a supply's limit is a guard and not a load. */
  private static final double LIMIT_ROOM = 1.5;

  private static final double LIMIT_STEP_AMPS = 0.05;

  /** What a supply's meter shows of nothing. */
  private static final double NOTHING_AMPS = 0;

  private final Bench bench;
  private final BenchSupply supply;
  private final Trials trials;
  private final Steps steps = new Steps();
  private final PackEnds ends;

  private SupplySteps(Bench bench, PackEnds ends) {
    this.bench = bench;
    this.supply = BenchSupply.of(bench);
    this.trials = new Trials(bench, supply);
    this.ends = ends;
  }

  static List<Step> of(Bench bench) {
    Optional<PackEnds> ends = PackEnds.of(bench.circuit());
    if (ends.isEmpty()) {
      return List.of();
    }
    SupplySteps supplied = new SupplySteps(bench, ends.get());
    supplied.set();
    supplied.switchedOff();
    supplied.idle();
    supplied.outputs();
    supplied.sound();
    supplied.motor();
    supplied.plugIn();
    return supplied.steps.list();
  }

  /** The supply alone, before anything is joined to it. */
  private void set() {
    String step = "supply-volts";
    Line act = Line.of("Supply alone, nothing joined: set its volts, then its limit");
    if (supply.first() instanceof Amount.Known volts) {
      act =
          Line.of(
              "Supply alone, nothing joined: set {}; short its leads and set the limit to {}",
              Line.number(Figure.of("first-volts", volts)),
              Line.number(limit("first-limit", List.of(fed(trials.first())))));
    }
    steps.add(
        step,
        act,
        Line.of("red on the supply's plus, black on its minus"),
        Meter.window(step, Unit.VOLTS, supply.first()),
        low("set it again; a reading with a minus sign: its leads are crossed"),
        high("set it again before anything is joined"));
  }

  private Amount fed(Trial trial) {
    return bench.cases().run(trial).fed();
  }

  /** One and a half times the most that is expected, never above the fuse's rating. */
  private Figure limit(String name, List<Amount> expected) {
    double most = 0;
    for (Amount amount : expected) {
      if (amount instanceof Amount.Known k) {
        most = Math.max(most, k.high());
      }
    }
    double limit = Math.ceil(most * LIMIT_ROOM / LIMIT_STEP_AMPS - 1e-9) * LIMIT_STEP_AMPS;
    limit = Math.max(0.1, Math.round(limit * 100) / 100.0);
    Amount fuse =
        bench.first(Kind.FUSE).map(f -> f.amount("rated_amps")).orElse(new Amount.Absent("fuse"));
    double capped = fuse instanceof Amount.Known f ? Math.min(limit, f.value()) : limit;
    return new Figure(name, capped, Unit.AMPS);
  }

  private void switchedOff() {
    Optional<State> off = offState();
    if (off.isEmpty() || ChargingStates.loaded(bench.circuit(), off.get())) {
      return;
    }
    String step = "off-amps";
    steps.add(
        step,
        UnpoweredSteps.ways(bench)
            .words(off.get(), off.get().switches().keySet())
            .and(
                Line.of(
                    ": join the supply in place of the pack, {} and {}",
                    own(ends.plus()),
                    own(ends.minus()))),
        Line.of("the supply's own ammeter, or a meter in its plus lead"),
        Meter.window(step, NOTHING_AMPS, NOTHING_AMPS, Unit.AMPS),
        high("something bypasses the switch, or a part sits before it: off at once, find it"));
  }

  private Optional<State> offState() {
    Map<String, String> switches = new TreeMap<>(bench.circuit().running().switches());
    boolean any = false;
    for (Map.Entry<String, List<String>> entry : bench.circuit().positions().entrySet()) {
      if (entry.getValue().contains("off")) {
        switches.put(entry.getKey(), "off");
        any = true;
      } else if (entry.getValue().contains("charge")) {
        switches.put(entry.getKey(), "charge");
        any = true;
      }
    }
    return any ? Optional.of(new State(false, switches, true, false)) : Optional.empty();
  }

  private void idle() {
    if (supply.startsLower()) {
      firstPower();
    }
    String step = "idle-amps";
    Trial idle = trials.idle();
    Line act = Line.of("Switch on, handset off, silent, lamps dark, wheels off the bench");
    if (supply.startsLower()) {
      act =
          Line.of(
              "Supply up to {}, limit as before; handset off, silent, lamps dark, wheels off the bench",
              Line.number(Figure.of("run-volts", supply.running().get())));
    }
    steps.add(
        step,
        act,
        Line.of("the supply's own ammeter"),
        Meter.window(step, Unit.AMPS, fed(idle)),
        low("receiver or decoder not joined, or its cut-off still holds it off"),
        high(
            "a part is fed the wrong way round or is broken, or a lamp or the sound is on: off at once"),
        none("open: fuse, switch, jack contact, or the supply's leads"));
    feedVolts(idle);
  }

  /** At a voltage at which a cut-off may still hold the electronics off. */
  private void firstPower() {
    String step = "first-amps";
    Amount most = fed(trials.first());
    Expected expected =
        most instanceof Amount.Known m
            ? Meter.window(step, NOTHING_AMPS, m.high(), Unit.AMPS)
            : Meter.window(step, Unit.AMPS, most);
    steps.add(
        step,
        Line.of("Switch on. A receiver below its cut-off may draw next to nothing"),
        Line.of("the supply's own ammeter"),
        expected,
        high("off at once: a short, or a part fed the wrong way round"));
  }

  private void feedVolts(Trial idle) {
    LoadEnds.of(bench.circuit())
        .ifPresent(
            load -> {
              String step = "feed-volts";
              steps.add(
                  step,
                  Line.of("The same, at the input of {}", own(load.device())),
                  Steps.red(load.plus(), load.minus()),
                  Meter.window(
                      step, Unit.VOLTS, bench.cases().run(idle).volts(load.plus(), load.minus())),
                  low(
                      "a poor joint or contact in the feed; a minus sign: plus and minus are crossed, off at once"),
                  none("open in the feed"));
            });
  }

  private void outputs() {
    List<Amount> totals = new ArrayList<>();
    totals.add(fed(trials.idle()));
    for (String output : bench.plan().names("outputs")) {
      if (!trials.lamps(output).isEmpty()) {
        totals.add(fed(trials.lit(trials.idle(), output)));
      }
    }
    if (trials.hasSound()) {
      totals.add(fed(trials.sounding(trials.idle())));
    }
    if (!bench.circuit().devices(Device.Sort.MOTOR).isEmpty()) {
      totals.add(fed(trials.turning(trials.idle())));
    }
    Figure limit = limit("run-limit", totals);
    boolean first = true;
    for (String output : bench.plan().names("outputs")) {
      if (!trials.lamps(output).isEmpty()) {
        output(output, first ? Optional.of(limit) : Optional.empty());
        first = false;
      }
    }
    if (first) {
      runLimit = Optional.of(limit);
    }
  }

  /** The limit for the rest of the steps, as long as no step has told it. */
  private Optional<Figure> runLimit = Optional.empty();

  private Line limited(Line act) {
    Line said = runLimit.map(l -> Line.of("Limit to {}. ", Line.number(l)).and(act)).orElse(act);
    runLimit = Optional.empty();
    return said;
  }

  private void output(String output, Optional<Figure> limit) {
    String step = output + "-rise";
    String lamps = String.join(", ", trials.lamps(output).stream().map(Device::name).toList());
    runLimit = limit;
    steps.add(
        step,
        limited(Line.of("{} on ({}): note by how much the current rises", own(output), own(lamps))),
        Line.of("the supply's own ammeter, before and after"),
        Meter.window(step, Unit.AMPS, trials.rise(trials.idle(), output)),
        low("a lamp of less current, one of several dark, or a LED the wrong way round"),
        high("another lamp than planned, or a LED without its resistor: off at once"),
        none(
            "lamp broken, on another output, a LED the wrong way round, or the output not mapped"));
  }

  private void sound() {
    if (!trials.hasSound()) {
      return;
    }
    String step = "sound-amps";
    steps.add(
        step,
        limited(
            Line.of(
                "Lamps dark, sound on at the volume planned, standing: note the highest steady reading")),
        Line.of("the supply's own ammeter"),
        Meter.between(step, Unit.AMPS, fed(trials.idle()), fed(trials.sounding(trials.idle()))),
        low("as standing silent: no sound? then the speaker or its leads"),
        high("volume above what is planned, or a speaker of too few ohm: turn it down, check it"));
  }

  private void motor() {
    List<Device> motors = bench.circuit().devices(Device.Sort.MOTOR);
    if (motors.isEmpty()) {
      return;
    }
    String step = "motor-amps";
    steps.add(
        step,
        limited(
            Line.of(
                "Silent, wheels off the bench: throttle slowly to full, one way, then the other; note the higher")),
        Line.of("the supply's own ammeter"),
        Meter.window(step, Unit.AMPS, fed(trials.turning(trials.idle()))),
        high(
            "the drive binds, old parts are still across the motor, or the motor is worn: off at once"),
        low(
            "it does not turn: a motor lead is off, decoder and handset do not speak, or the receiver has cut off"));
  }

  /** With an empty plug in, a break contact or nothing at all parts the load. */
  private void plugIn() {
    State plugged = ChargingStates.charging(bench);
    if (ChargingWay.packTakenOut(bench.plan())
        || !bench.circuit().hasPlug()
        || ChargingStates.loaded(bench.circuit(), plugged)) {
      return;
    }
    String step = "plug-in-amps";
    steps.add(
        step,
        Line.of("All off but the main switch. ")
            .and(Line.of("Put an empty plug into the jack; switches: "))
            .and(UnpoweredSteps.ways(bench).words(plugged, plugged.switches().keySet())),
        Line.of("the supply's own ammeter"),
        Meter.window(step, NOTHING_AMPS, NOTHING_AMPS, Unit.AMPS),
        high(
            "the plug does not part the load: it would be fed while charging; no charger until mended"));
  }
}
