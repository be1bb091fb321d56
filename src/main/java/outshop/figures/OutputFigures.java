package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.LampValues;
import outshop.circuit.LoadCase;
import outshop.circuit.Places;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;

/** Amps through function outputs: glowing, and in the moment a cold filament is switched on. */
final class OutputFigures {
  /**
   * By how much a cold filament may exceed the rating for lasting current where a data sheet states
   * no peak. Common practice, no source.
   */
  private static final double USUAL_PEAK = 10;

  private static final LoadCase LIT = new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING);

  private final Bench bench;
  private final Demands demands;

  /**
   * Each lamp on its own, also where the plan states what all draw together: that sum says nothing
   * of one output.
   */
  private final Cases lampByLamp;

  private OutputFigures(Bench bench, Demands demands) {
    this.bench = bench;
    this.demands = demands;
    this.lampByLamp =
        bench.plan().amount("measured.lamps").isKnown()
            ? new Cases(without(bench.plan(), "measured.lamps"), bench.circuit())
            : bench.cases();
  }

  static List<Object> of(Bench bench, Demands demands) {
    OutputFigures figures = new OutputFigures(bench, demands);
    Map<Fitted, List<OutputLoad>> byDecoder = new LinkedHashMap<>();
    for (String number : bench.plan().names("outputs")) {
      figures
          .decoder(number)
          .ifPresent(
              d ->
                  figures
                      .output(d, number)
                      .ifPresent(o -> byDecoder.computeIfAbsent(d, x -> new ArrayList<>()).add(o)));
    }
    List<Object> facts = new ArrayList<>();
    byDecoder.forEach(
        (decoder, outputs) -> {
          facts.addAll(outputs);
          facts.add(figures.together(decoder, outputs, byDecoder.size() == 1));
        });
    return facts;
  }

  private static Plan without(Plan plan, String path) {
    Map<String, Plan.Stated> stated = new LinkedHashMap<>(plan.stated());
    stated.remove(path);
    List<Fitted> parts = new ArrayList<>(plan.parts());
    parts.addAll(plan.materials());
    return new Plan(plan.file(), stated, parts, plan.wires(), plan.accepted());
  }

  private Optional<Fitted> decoder(String number) {
    return bench
        .plan()
        .text("outputs." + number + ".decoder")
        .flatMap(bench.plan()::part)
        .or(() -> bench.first(Kind.DECODER));
  }

  private Optional<OutputLoad> output(Fitted decoder, String number) {
    List<Device> loads = new ArrayList<>();
    for (String load : bench.plan().list("outputs." + number + ".feeds").orElse(List.of())) {
      bench.circuit().device(load).ifPresent(loads::add);
    }
    if (loads.isEmpty()) {
      return Optional.empty();
    }
    String terminal = decoder.name() + "." + number;
    Amount steadyLimit = decoder.amount("function_amps");
    return Optional.of(
        new OutputLoad(
            new At(Station.LIGHTS, terminal, "function output " + number + " of " + decoder.name()),
            decoder,
            false,
            steady(decoder, number, loads),
            steadyLimit,
            inrush(decoder, number, loads),
            decoder.amount("function_peak_amps").orElse(usualPeak(decoder, steadyLimit, 1))));
  }

  /**
   * The peak where none is stated.
   *
   * @param least the least it may be, times the lasting current: 1 where a peak could have been
   *     stated, as many as usual where the data has no column for one
   */
  private static Amount usualPeak(Fitted decoder, Amount steadyLimit, double least) {
    Amount factor =
        Amount.assumed(
            USUAL_PEAK,
            least,
            USUAL_PEAK,
            Unit.COUNT,
            decoder.name() + ": function_peak_amps over function_amps",
            "no peak is stated; at least the lasting current, by common practice ten times it");
    return Amount.computed(
        decoder.name() + ": usual peak",
        Unit.AMPS,
        "10 x the lasting current, where no peak is stated",
        v -> v[0] * v[1],
        factor,
        steadyLimit);
  }

  private Amount steady(Fitted decoder, String number, List<Device> loads) {
    Amount measured = bench.plan().amount("measured.lamps");
    if (measured.isKnown() && bench.plan().names("outputs").size() == 1) {
      return measured;
    }
    for (Device load : loads) {
      if (isUnlimited(decoder, number, load)) {
        return Amount.missing(
            number,
            "resistor",
            "choose one for " + load.name() + ": with nothing to limit it, its current has no end");
      }
    }
    return lit(decoder.name() + " " + number);
  }

  /** The current of an element with all lamps on. */
  private Amount lit(String element) {
    Amount gap = demands.standing(element);
    Amount amps = lampByLamp.amps(LIT, element);
    return gap.isMissing() && !amps.isMissing() ? gap : amps;
  }

  private boolean isUnlimited(Fitted decoder, String number, Device load) {
    return load.sort() == Device.Sort.LED
        && !decoder.said("function_output").is("current-regulated")
        && bench.plan().text("outputs." + number + ".resistor").isEmpty()
        && !LampValues.of(bench.plan(), load).seriesOhms().isKnown();
  }

  /** Cold filaments, and whatever else is lit at the same moment; absent without a filament. */
  private Amount inrush(Fitted decoder, String number, List<Device> loads) {
    List<Amount> coldOhms = new ArrayList<>();
    List<Amount> others = new ArrayList<>();
    for (Device load : loads) {
      if (load.sort() == Device.Sort.BULB) {
        coldOhms.add(coldOhms(load));
      } else {
        others.add(lit(load.name()));
      }
    }
    if (coldOhms.isEmpty()) {
      return new Amount.Absent("output " + number + ", inrush");
    }
    Amount cold = inrush(number, outputVolts(decoder), resistor(number), coldOhms);
    if (others.isEmpty()) {
      return cold;
    }
    others.add(0, cold);
    return Amount.sum("output " + number + ", switched on cold", Unit.AMPS, others);
  }

  /**
   * The current in the moment cold filaments side by side are switched on: {@code volts / (resistor
   * + 1 / sum of 1 / cold resistance)}.
   *
   * @param resistorOhms in their common lead; absent where there is none
   */
  static Amount inrush(String label, Amount volts, Amount resistorOhms, List<Amount> coldOhms) {
    List<Amount> inputs = new ArrayList<>(List.of(volts));
    boolean resistor = !resistorOhms.isAbsent();
    if (resistor) {
      inputs.add(resistorOhms);
    }
    inputs.addAll(coldOhms);
    return Amount.computed(
        label + ", filaments cold",
        Unit.AMPS,
        resistor ? "output volts / (resistor + cold resistance)" : "output volts / cold resistance",
        v -> {
          double siemens = 0;
          for (int i = resistor ? 2 : 1; i < v.length; i++) {
            siemens += 1 / v[i];
          }
          return v[0] / ((resistor ? v[1] : 0) + 1 / siemens);
        },
        inputs);
  }

  private Amount resistor(String number) {
    return bench
        .plan()
        .text("outputs." + number + ".resistor")
        .flatMap(bench.plan()::part)
        .map(r -> r.amount("resistance_ohms"))
        .orElseGet(() -> new Amount.Absent("output " + number + ": resistor"));
  }

  /** What a lamp on an output sees at most: the common's volts less the output's own drop. */
  private Amount outputVolts(Fitted decoder) {
    Amount regulated = decoder.amount("function_supply_volts");
    String name = decoder.name();
    Amount gap = demands.standing(name);
    Amount common =
        regulated.isKnown()
            ? regulated
            : gap.isMissing() ? gap : bench.cases().volts(LIT, name + ".rail+", name + ".rail-");
    return Amount.computed(
        name + ": volts for a lamp",
        Unit.VOLTS,
        "common - output's drop",
        v -> v[0] - v[1],
        common,
        decoder.amount("function_drop_volts"));
  }

  /**
   * A filament's cold resistance. An ohmmeter reads it on a lamp of the locomotive, if it is known
   * to be a filament or reads alike both ways.
   */
  private Amount coldOhms(Device lamp) {
    Amount stated = LampValues.of(bench.plan(), lamp).coldOhms();
    if (lamp.part().isPresent()) {
      return stated;
    }
    String at = "locomotive.lamps." + lamp.name() + ".";
    Said kind = bench.plan().said(at + "kind");
    if (!kind.is("filament")
        && Readings.lamp(stated, bench.plan().amount(at + "reverse")) != Readings.Lamp.FILAMENT) {
      return Amount.missing(
          lamp.name(), "kind", "read it with an ohmmeter both ways: alike means a filament");
    }
    return stated.isAbsent()
        ? Amount.missing(
            lamp.name(), "forward", "it reads open: broken, or no filament; read it again")
        : stated.named(lamp.name() + ": cold resistance");
  }

  private OutputLoad together(Fitted decoder, List<OutputLoad> outputs, boolean only) {
    Amount measured = bench.plan().amount("measured.lamps");
    Amount limit = decoder.amount("functions_total_amps");
    List<Amount> inrush = outputs.stream().map(OutputLoad::inrushAmps).toList();
    List<Amount> atOnce = new ArrayList<>();
    for (OutputLoad output : outputs) {
      atOnce.add(output.inrushAmps().isAbsent() ? output.steadyAmps() : output.inrushAmps());
    }
    return new OutputLoad(
        Places.of(decoder),
        decoder,
        true,
        measured.isKnown() && only
            ? measured
            : Amount.sum(
                decoder.name() + ": all outputs",
                Unit.AMPS,
                outputs.stream().map(OutputLoad::steadyAmps).toList()),
        limit,
        inrush.stream().allMatch(Amount::isAbsent)
            ? new Amount.Absent(decoder.name() + ": inrush")
            : Amount.sum(decoder.name() + ": all outputs, switched on cold", Unit.AMPS, atOnce),
        usualPeak(decoder, limit, USUAL_PEAK));
  }
}
