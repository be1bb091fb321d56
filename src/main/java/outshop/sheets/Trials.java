package outshop.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.LampValues;
import outshop.circuit.MotorValues;
import outshop.circuit.PackValues;
import outshop.circuit.Trial;
import outshop.figures.Bench;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Unit;

/** The trials of the powered steps: the plan's own circuit under other feeds and loads. */
public final class Trials {
  /** The supply's element in a trial's network. */
  public static final String SUPPLY = "bench supply";

  /** A bench supply with its leads, in ohms: from memory. */
  private static final double[] SUPPLY_OHMS = {0.05, 0.01, 0.2};

  /**
   * The power of a filament's current against its volts, with how far it is trusted away from the
   * rated volts: 0.55 from the Standard Handbook for Electrical Engineers, 11th ed. 1978, p. 22-8
   * (read second-hand); the range from memory.
   */
  private static final double[] FILAMENT = {0.55, 0.45, 0.65};

  /** One lamp or heater against the next of its kind: from memory. */
  private static final double[] SPREAD = {1, 0.9, 1.1};

  /**
   * A motor that runs free, wheels off the bench, against its current with a train: common
   * practice, no source.
   */
  private static final double[] FREE = {0.5, 0.1, 1};

  private final Bench bench;
  private final BenchSupply supply;

  Trials(Bench bench, BenchSupply supply) {
    this.bench = bench;
    this.supply = supply;
  }

  /** The trials of a plan, with the bench voltages chosen from its parts. */
  public static Trials of(Bench bench) {
    return new Trials(bench, BenchSupply.of(bench));
  }

  /** At the first power: electronics alone. */
  public Trial first() {
    return fedBy("first power", supply.first());
  }

  /** Electronics alone, at the volts at which they run. */
  public Trial idle() {
    return fedBy("electronics alone", supply.running());
  }

  private Trial fedBy(String words, Amount volts) {
    Amount set =
        volts instanceof Amount.Known v
            ? Amount.assumed(
                v.value(),
                Meter.least(v.value(), Unit.VOLTS),
                Meter.most(v.value(), Unit.VOLTS),
                Unit.VOLTS,
                "bench supply: volts",
                "set by a meter")
            : volts;
    Amount ohms =
        Amount.assumed(
            SUPPLY_OHMS[0],
            SUPPLY_OHMS[1],
            SUPPLY_OHMS[2],
            Unit.OHMS,
            "bench supply: resistance with its leads",
            "from memory");
    return trial(words, new Trial.Feed(SUPPLY, set, ohms), volts);
  }

  /** Electronics alone, on the pack, however full it is. */
  public Trial onPack() {
    PackValues pack = bench.pack().orElseThrow();
    Amount volts =
        pack.nominalVolts() instanceof Amount.Known n
                && pack.emptyVolts() instanceof Amount.Known e
                && pack.fullVolts() instanceof Amount.Known f
            ? Amount.assumed(
                Math.max(e.low(), Math.min(f.high(), n.value())),
                e.low(),
                f.high(),
                Unit.VOLTS,
                "pack: volts",
                "anything from empty to full")
            : pack.nominalVolts().isMissing() ? pack.nominalVolts() : pack.fullVolts();
    return trial("pack, standing", new Trial.Feed("pack", volts, pack.ohms()), volts);
  }

  private Trial trial(String words, Trial.Feed feed, Amount volts) {
    return new Trial(
        words, feed, bench.circuit().running(), ownShare(volts), Map.of(), false, Map.of());
  }

  /**
   * What electronics draw at other volts than the pack's nominal ones: the same current where they
   * are fed by a linear regulator, the same power where by a switching one.
   */
  private Amount ownShare(Amount volts) {
    Amount turned =
        Amount.computed(
            "own current against volts",
            Unit.SHARE,
            "pack nominal / volts",
            v -> v[0] / v[1],
            supply.nominal(),
            volts);
    if (!(turned instanceof Amount.Known k)) {
      return Amount.assumed(1, 0.5, 2, Unit.SHARE, "own current", "the pack's volts are not known");
    }
    return Amount.assumed(
        1,
        Math.min(1, k.low()),
        Math.max(1, k.high()),
        Unit.SHARE,
        "own current at these volts",
        "the same current, or the same power as at the pack's nominal volts");
  }

  /** What one function output feeds, lit, in a trial. */
  public Trial lit(Trial base, String output) {
    Map<String, Amount> lamps = new LinkedHashMap<>();
    for (Device lamp : lamps(output)) {
      lamps.put(lamp.name(), drawn(base, lamp));
    }
    return base.lighting("lamps of " + output + " lit", lamps);
  }

  /** The lamps, LEDs and heaters on an output. */
  List<Device> lamps(String output) {
    List<String> feeds = bench.plan().list("outputs." + output + ".feeds").orElse(List.of());
    return bench.circuit().devices().stream()
        .filter(d -> feeds.contains(d.name()))
        .filter(
            d ->
                d.sort() == Device.Sort.BULB
                    || d.sort() == Device.Sort.LED
                    || d.sort() == Device.Sort.SMOKE_HEATER)
        .toList();
  }

  /** What the supply's current rises by when an output is switched on, in amps. */
  public Amount rise(Trial base, String output) {
    Cases.Run run = bench.cases().run(lit(base, output));
    return Amount.sum(
        "rise when " + output + " is switched on",
        Unit.AMPS,
        lamps(output).stream().map(lamp -> run.amps(lamp.name())).toList());
  }

  /** What a lamp draws at the volts it gets in a trial; a LED is solved by its own law. */
  private Amount drawn(Trial base, Device lamp) {
    LampValues values = LampValues.of(bench.plan(), lamp);
    if (lamp.sort() == Device.Sort.LED) {
      return values.amps();
    }
    Amount volts =
        bench
            .cases()
            .run(base.lighting("lamp at its rated current", Map.of(lamp.name(), values.amps())))
            .volts(lamp.terminal("a"), lamp.terminal("b"));
    Amount spread = assumed(SPREAD, lamp.name() + ": spread", "one lamp against the next");
    boolean heater = lamp.sort() == Device.Sort.SMOKE_HEATER;
    Amount power =
        heater
            ? Plan.fixed(
                1, Unit.COUNT, lamp.name() + ": current against volts", "a plain resistance")
            : assumed(FILAMENT, lamp.name() + ": current against volts", "filament law");
    return Amount.computed(
        lamp.name() + ": current at these volts",
        Unit.AMPS,
        "rated current x (volts / rated volts)^" + (heater ? "1" : "0.55") + " x spread",
        v -> v[0] * Math.pow(Math.max(0, v[1]) / v[2], v[3]) * v[4],
        values.amps(),
        volts,
        values.ratedVolts(),
        power,
        spread);
  }

  /** All motors running free, wheels off the bench. */
  public Trial turning(Trial base) {
    Map<String, Amount> motors = new LinkedHashMap<>();
    for (Device motor : bench.circuit().devices(Device.Sort.MOTOR)) {
      MotorValues values = MotorValues.of(bench.plan(), motor.name(), supply.nominal());
      Amount free = assumed(FREE, motor.name() + ": running free", "share of cruising");
      motors.put(
          motor.name(),
          Amount.computed(
              motor.name() + ": current running free",
              Unit.AMPS,
              "cruising x share",
              v -> v[0] * v[1],
              values.cruisingAmps(),
              free));
    }
    return base.turning("motor running free", motors);
  }

  /** The base with its sound on. */
  public Trial sounding(Trial base) {
    return base.sounding("sound on");
  }

  /** Whether a decoder of the plan makes sound through a speaker. */
  boolean hasSound() {
    boolean sound =
        bench.plan().parts(Kind.DECODER).stream()
            .map(d -> d.said("sound"))
            .anyMatch(s -> s.is("yes"));
    return sound && !outshop.circuit.SpeakerValues.of(bench.plan()).members().isEmpty();
  }

  private static Amount assumed(double[] range, String label, String why) {
    return Amount.assumed(range[0], range[1], range[2], Unit.SHARE, label, why);
  }
}
