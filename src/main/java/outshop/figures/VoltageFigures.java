package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.LoadCase;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/** Volts at the parts that are fed: the most they ever see, and what is left under load. */
final class VoltageFigures {
  static final Pieces<Optional<VoltageFigures>> PIECES =
      new Pieces<>(
          bench -> bench.pack().map(pack -> new VoltageFigures(bench, pack)),
          List.of(
              withAPack(VoltageFigures::feeds),
              withAPack(VoltageFigures::inputs),
              withAPack(figures -> new LampFeeds(figures.bench, figures.noLoad).all()),
              withAPack(VoltageFigures::motors),
              withAPack(VoltageFigures::ratings),
              withAPack(VoltageFigures::working)));

  private final Bench bench;
  private final PackValues pack;
  private final NoLoad noLoad;
  private final FedVolts fed;

  private VoltageFigures(Bench bench, PackValues pack) {
    this.bench = bench;
    this.pack = pack;
    this.noLoad = new NoLoad(bench);
    this.fed = new FedVolts(bench, noLoad);
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private static Function<Optional<VoltageFigures>, List<?>> withAPack(
      Function<VoltageFigures, List<?>> piece) {
    return figures -> figures.<List<?>>map(piece).orElse(List.of());
  }

  private List<?> feeds() {
    List<Object> facts = new ArrayList<>();
    bench.plan().parts(Kind.RECEIVER).forEach(r -> facts.add(receiver(r)));
    bench.plan().parts(Kind.DECODER).forEach(d -> facts.add(decoder(d)));
    return facts;
  }

  private List<?> inputs() {
    List<Object> facts = new ArrayList<>();
    bench.plan().parts(Kind.DECODER).forEach(d -> sensorInput(d).ifPresent(facts::add));
    bench.plan().parts(Kind.REGULATOR).forEach(r -> facts.add(regulator(r)));
    bench.plan().parts(Kind.CAPACITOR).forEach(c -> facts.add(holdUp(c)));
    return facts;
  }

  private Feed receiver(Fitted receiver) {
    String plus = receiver.name() + ".in+";
    String minus = receiver.name() + ".in-";
    return feed(receiver, orElse(noLoad.volts(plus), pack.fullVolts()), plus, minus);
  }

  private Feed decoder(Fitted decoder) {
    String plus = decoder.name() + ".in-a";
    return feed(decoder, decoderFullVolts(decoder), plus, decoder.name() + ".in-b");
  }

  /**
   * What a decoder sees at most. Where the plan does not wire it, as if receiver and pack fed it.
   */
  private Amount decoderFullVolts(Fitted decoder) {
    Amount unwired =
        bench
            .first(Kind.RECEIVER)
            .map(receiver -> NoLoad.receiverOutput(receiver, pack.fullVolts()))
            .orElse(pack.fullVolts());
    return orElse(noLoad.volts(decoder.name() + ".in-a"), unwired);
  }

  private static Amount orElse(Amount volts, Amount otherwise) {
    return volts.isAbsent() ? otherwise : volts;
  }

  private Feed feed(Fitted part, Amount fullVolts, String plus, String minus) {
    Amount empty = sustained(part, LoadCase.Charge.EMPTY, plus, minus);
    return new Feed(
        Places.of(part),
        part,
        fullVolts,
        sustained(part, LoadCase.Charge.NOMINAL, plus, minus),
        empty,
        underLoad(part, LoadCase.Charge.EMPTY, plus, minus, LoadCase.Drive.BLOCKED),
        ChargeCurve.unused(pack, empty, part.amount("input_min_volts")));
  }

  private Amount sustained(Fitted part, LoadCase.Charge charge, String plus, String minus) {
    return underLoad(part, charge, plus, minus, LoadCase.Drive.SLIPPING, LoadCase.Drive.CRUISING);
  }

  /** The least volts at a part in some cases; missing where the wiring does not feed it at all. */
  private Amount underLoad(
      Fitted part, LoadCase.Charge charge, String plus, String minus, LoadCase.Drive... drives) {
    List<Amount> all = new ArrayList<>();
    for (LoadCase.Drive drive : drives) {
      all.add(fed.volts(part.name(), new LoadCase(charge, drive), plus, minus));
    }
    return Cases.least(all);
  }

  private RegulatorFeed regulator(Fitted regulator) {
    String plus = regulator.name() + ".in+";
    String minus = regulator.name() + ".in-";
    Amount overOutput =
        Amount.computed(
            regulator.name() + ": output and drop-out",
            Unit.VOLTS,
            "output volts + drop-out volts",
            v -> v[0] + v[1],
            regulator.amount("output_volts"),
            regulator.amount("dropout_volts"));
    return new RegulatorFeed(
        Places.of(regulator),
        regulator,
        orElse(noLoad.volts(plus), pack.fullVolts()),
        sustained(regulator, LoadCase.Charge.NOMINAL, plus, minus),
        sustained(regulator, LoadCase.Charge.EMPTY, plus, minus),
        Cases.greatest(List.of(regulator.amount("input_min_volts"), overOutput)));
  }

  private HoldUpFeed holdUp(Fitted capacitor) {
    Amount unwired = bench.first(Kind.DECODER).map(this::decoderFullVolts).orElse(pack.fullVolts());
    Amount full = orElse(noLoad.volts(capacitor.name() + ".plus"), unwired);
    return new HoldUpFeed(Places.of(capacitor), full, capacitor.amount("dc_volts"));
  }

  private Optional<SensorInput> sensorInput(Fitted decoder) {
    return SensorInput.needed(bench.plan(), decoder)
        ? Optional.of(
            new SensorInput(
                Places.of(decoder), decoderFullVolts(decoder), decoder.amount("sensor_max_volts")))
        : Optional.empty();
  }

  private List<WorkingVoltage> working() {
    return List.of(WorkingVoltage.of(Places.of(pack.pack()), noLoad.highest()));
  }

  private List<MotorFeed> motors() {
    List<MotorFeed> facts = new ArrayList<>();
    Amount limit = speedLimit();
    for (Device motor : bench.circuit().devices(Device.Sort.MOTOR)) {
      Optional<Amount> unfed = reached(motor) ? Optional.empty() : noLoad.patternWanted();
      if (reached(motor) || unfed.isPresent()) {
        facts.add(
            new MotorFeed(
                Places.of(motor),
                unfed.orElseGet(() -> atFullThrottle(motor, LoadCase.Charge.FULL, limit)),
                unfed.orElseGet(() -> atFullThrottle(motor, LoadCase.Charge.NOMINAL, limit)),
                bench.plan().amount("locomotive.motors." + motor.name() + ".rated")));
      }
    }
    return facts;
  }

  private boolean reached(Device motor) {
    return !noLoad.volts(motor.terminal("plus")).isAbsent()
        || !noLoad.volts(motor.terminal("minus")).isAbsent();
  }

  private Amount atFullThrottle(Device motor, LoadCase.Charge charge, Amount limit) {
    LoadCase cruising = new LoadCase(charge, LoadCase.Drive.CRUISING);
    return Amount.computed(
        "volts at " + motor.name() + " at the top speed step, " + charge.words(),
        Unit.VOLTS,
        "volts while cruising x speed limit",
        v -> Math.abs(v[0]) * v[1],
        bench.cases().volts(cruising, motor.terminal("plus"), motor.terminal("minus")),
        limit);
  }

  /** The share of the volts that reaches the motor at the top speed step. */
  private Amount speedLimit() {
    return bench
        .plan()
        .amount("wishes.speed_limit")
        .orElse(
            Amount.assumed(
                1,
                1,
                1,
                Unit.SHARE,
                "wishes: speed_limit",
                "not stated; a drive gives all it has unless it is told otherwise"));
  }

  private List<VoltageRating> ratings() {
    List<VoltageRating> facts = new ArrayList<>();
    for (Fitted part : bench.plan().parts()) {
      switch (part.kind()) {
        case FUSE, SWITCH, CONNECTOR, CABLE ->
            facts.add(VoltageRating.of(part, volts(part, List.of())));
        case JACK, PLUG -> facts.add(VoltageRating.of(part, volts(part, charger())));
        default -> {
          // Has no contact that must part or hold off a voltage.
        }
      }
    }
    return facts;
  }

  private List<Amount> charger() {
    Optional<Fitted> charger = bench.first(Kind.CHARGER);
    return charger.map(c -> c.amount("charge_volts")).stream().toList();
  }

  /** The most volts at any terminal of a part; where the plan does not wire it, the pack's. */
  private Amount volts(Fitted part, List<Amount> besides) {
    List<Amount> all = new ArrayList<>();
    bench.circuit().links().stream()
        .filter(link -> link.part().map(part::equals).orElse(false))
        .forEach(
            link -> {
              all.add(noLoad.volts(link.from()));
              all.add(noLoad.volts(link.to()));
            });
    List<Amount> everywhere = new ArrayList<>(besides);
    everywhere.add(orElse(NoLoad.greatest(all, part.name()), noLoad.highest()));
    return Cases.greatest(everywhere);
  }
}
