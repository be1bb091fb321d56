package outshop.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.LampValues;
import outshop.circuit.LoadCase;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Unit;

/** Lamps, LEDs, smoke heaters and the function outputs they hang on. */
final class LightingFigures {
  private static final LoadCase LIT = new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING);

  static final Pieces<LightingFigures> PIECES =
      new Pieces<>(
          LightingFigures::new,
          List.of(
              figures -> figures.leds.all(),
              figures -> new LampFigures(figures.bench).all(),
              LightingFigures::resistors,
              figures -> new SmokeFigures(figures.bench, figures.noLoad).all(),
              figures -> figures.functionCount().stream().toList(),
              LightingFigures::outputNumbers));

  private final Bench bench;
  private final NoLoad noLoad;
  private final LedFigures leds;

  private LightingFigures(Bench bench) {
    this.bench = bench;
    this.noLoad = new NoLoad(bench);
    this.leds = new LedFigures(bench, noLoad);
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private Optional<FunctionCount> functionCount() {
    List<Fitted> decoders = bench.plan().parts(Kind.DECODER);
    Optional<Fitted> first = decoders.stream().findFirst().or(() -> bench.first(Kind.RECEIVER));
    Amount there =
        decoders.isEmpty()
            ? Plan.fixed(0, Unit.COUNT, "function outputs", "there is no decoder")
            : Amount.sum(
                "function outputs",
                Unit.COUNT,
                decoders.stream().map(d -> d.amount("function_count")).toList());
    return first.map(
        part -> new FunctionCount(Places.of(part), bench.plan().amount("wishes.functions"), there));
  }

  private List<Object> outputNumbers() {
    List<Object> facts = new ArrayList<>();
    for (Fitted decoder : bench.plan().parts(Kind.DECODER)) {
      FunctionOutput.all(bench).stream()
          .filter(o -> o.decoder().equals(decoder))
          .map(o -> Integer.parseInt(o.name().substring("out-".length())))
          .max(Comparator.naturalOrder())
          .ifPresent(
              highest ->
                  facts.add(
                      new OutputNumber(
                          Places.of(decoder),
                          Plan.fixed(highest, Unit.COUNT, "highest output", "stated in the plan"),
                          decoder.amount("function_count"))));
    }
    return facts;
  }

  private List<Object> resistors() {
    List<Object> facts = new ArrayList<>();
    for (Device resistor : bench.circuit().devices(Device.Sort.RESISTOR)) {
      Fitted part = resistor.part().orElseThrow();
      heat(resistor, part)
          .ifPresent(
              watts ->
                  facts.add(
                      new ResistorHeat(
                          Places.of(resistor),
                          watts,
                          part.amount("watts"),
                          part.amount("resistance_ohms"),
                          LedResistor.rating(resistor.name(), watts))));
    }
    return facts;
  }

  /** The heat of a resistor with everything lit; empty for one that is joined to nothing. */
  private Optional<Amount> heat(Device resistor, Fitted part) {
    Map<Device, Amount> behind = leds.behind(resistor);
    List<Amount> amps = new ArrayList<>(behind.values());
    Optional<FunctionOutput> output = outputWith(part);
    output.ifPresent(o -> amps.addAll(lamps(o)));
    Amount ohms = part.amount("resistance_ohms");
    if (!amps.isEmpty()) {
      Amount together =
          amps.size() == 1
              ? amps.get(0)
              : Amount.sum(resistor.name() + ": current", Unit.AMPS, amps);
      Amount at =
          behind.size() == amps.size()
              ? together
              : atMost(resistor, output.orElseThrow(), together);
      return at.isAbsent()
          ? Optional.empty()
          : Optional.of(LedResistor.heat(resistor.name(), at, ohms));
    }
    return isJoined(resistor) ? Optional.of(solved(resistor)) : Optional.empty();
  }

  private Optional<FunctionOutput> outputWith(Fitted resistor) {
    return FunctionOutput.all(bench).stream()
        .filter(o -> o.resistor(bench).filter(resistor::equals).isPresent())
        .findFirst();
  }

  /** What bulbs and heaters on an output draw. */
  private List<Amount> lamps(FunctionOutput output) {
    List<Amount> amps = new ArrayList<>();
    for (String load : output.feeds(bench)) {
      bench
          .circuit()
          .device(load)
          .filter(d -> d.sort() == Device.Sort.BULB || d.sort() == Device.Sort.SMOKE_HEATER)
          .ifPresent(d -> amps.add(LampValues.of(bench.plan(), d).ampsOrUsual()));
    }
    return amps;
  }

  /** Lamps draw no more through a resistor than the volts there drive through it alone. */
  private Amount atMost(Device resistor, FunctionOutput output, Amount together) {
    String decoder = output.decoder().name() + ".";
    Amount volts =
        NoLoad.greatest(
            List.of(noLoad.volts(decoder + "common"), noLoad.volts(decoder + output.name())),
            resistor.name() + ": volts");
    Amount fed = volts.isAbsent() ? noLoad.patternWanted().orElse(volts) : volts;
    Amount alone =
        Readings.amps(
            resistor.name() + ": current with nothing behind it",
            fed,
            resistor.part().orElseThrow().amount("resistance_ohms"));
    return alone.isAbsent() ? alone : Cases.least(List.of(together, alone));
  }

  private boolean isJoined(Device resistor) {
    return bench.circuit().links().stream()
        .anyMatch(l -> touches(resistor, l.from()) || touches(resistor, l.to()));
  }

  private static boolean touches(Device resistor, String terminal) {
    return terminal.startsWith(resistor.name() + ".");
  }

  private Amount solved(Device resistor) {
    return bench.plan().amount("measured.lamps").isKnown()
        ? Amount.missing(
            resistor.name(),
            "current through it",
            "read it: the plan states only what all lamps draw together")
        : bench.cases().watts(LIT, resistor.name());
  }
}
