package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import outshop.circuit.At;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.LampValues;
import outshop.circuit.LoadCase;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * LEDs, what limits their current, and which way round they are joined: I = (V - V_f) / R.
 *
 * <p>Source: T. R. Kuphaldt, Lessons in Electric Circuits, volume III (Semiconductors), chapter 3,
 * section on light-emitting diodes.
 */
final class LedFigures {
  /** A small LED of today visibly shines from here on. Common practice, no source. */
  private static final double LEAST_AMPS = 0.0005;

  private final Bench bench;
  private final NoLoad noLoad;
  private final List<Object> facts = new ArrayList<>();
  private final Map<Device, LedPath> paths = new LinkedHashMap<>();
  private final Map<Device, Amount> fullAmps = new LinkedHashMap<>();

  LedFigures(Bench bench, NoLoad noLoad) {
    this.bench = bench;
    this.noLoad = noLoad;
    LedPath.Finder finder = new LedPath.Finder(bench);
    for (Device led : bench.circuit().devices(Device.Sort.LED)) {
      finder.through(led).ifPresent(path -> paths.put(led, path));
    }
    paths.values().forEach(this::led);
  }

  List<Object> all() {
    return facts;
  }

  /** The LEDs behind a resistor, each with its current at full; in their order. */
  Map<Device, Amount> behind(Device resistor) {
    Map<Device, Amount> found = new LinkedHashMap<>();
    paths.forEach(
        (led, path) -> {
          boolean firstOfSeries = path.series().stream().noneMatch(found::containsKey);
          if (path.resistors().contains(resistor) && firstOfSeries) {
            found.put(led, fullAmps.get(led));
          }
        });
    return found;
  }

  private void led(LedPath path) {
    Lit lit = new Lit(path);
    At at = Places.of(path.led());
    fullAmps.put(path.led(), lit.fullAmps());
    facts.add(new LedLimiter(at, lit.limited(), lit.limiter(), lit.fitting()));
    facts.add(new LedPolarity(at, polarity(path), common(path)));
    if (!lit.fullVolts().isAbsent()) {
      facts.add(
          new LedFeed(
              at,
              lit.fullAmps(),
              lit.nominalAmps(),
              lit.own.amps(),
              least(),
              lit.limiter(),
              lit.fitting()));
    }
    if (path.beside().size() > 1 && path.beside().get(0).equals(path.led())) {
      beside(lit, at);
    }
  }

  private static Amount least() {
    return Plan.fixed(
        LEAST_AMPS, Unit.AMPS, "least current of a LED that shines", "common practice, no source");
  }

  /** Side by side, the one with the lowest forward volts takes the most. */
  private void beside(Lit lit, At at) {
    if (!lit.limited().word().equals("fine")) {
      return;
    }
    List<Amount> own =
        lit.path.beside().stream().map(d -> LampValues.of(bench.plan(), d).seriesOhms()).toList();
    List<Want> wants = Standing.wants(own.toArray(Amount[]::new));
    Standing standing =
        own.stream().anyMatch(Amount::isAbsent)
            ? Standing.of("shared")
            : wants.isEmpty() ? Standing.FINE : Standing.open(wants);
    facts.add(
        new LedsBeside(
            at,
            standing,
            lit.path.beside().stream().map(Device::name).collect(Collectors.joining(" and ")),
            lit.limiter()));
  }

  private Standing polarity(LedPath path) {
    List<Want> wants = new ArrayList<>();
    FunctionOutput.feeding(bench, path.led().name())
        .ifPresent(output -> anodeUnsaid(path.led(), output).ifPresent(wants::add));
    path.decoder().ifPresent(decoder -> wants.addAll(Standing.wants(decoder.said("common"))));
    if (!wants.isEmpty()) {
      return Standing.open(wants);
    }
    return path.backwards() ? Standing.of("backwards") : Standing.FINE;
  }

  /** What is wanted where the plan does not say on which side the anode of a LED lies. */
  private Optional<Want> anodeUnsaid(Device led, FunctionOutput output) {
    Said atOutput = bench.plan().said(output.key("anode"));
    if (led.part().isPresent()) {
      return atOutput instanceof Said.Unsaid unsaid ? Optional.of(unsaid.want()) : Optional.empty();
    }
    Said own = bench.plan().said("locomotive.lamps." + led.name() + ".anode");
    return own instanceof Said.Unsaid unsaid && atOutput.isUnsaid()
        ? Optional.of(unsaid.want())
        : Optional.empty();
  }

  private static String common(LedPath path) {
    return path.decoder().map(d -> d.said("common").or("plus")).orElse("plus");
  }

  /** One LED in its way, and what flows there. */
  private final class Lit {
    private final LedPath path;
    private final LampValues own;
    private final boolean regulated;

    Lit(LedPath path) {
      this.path = path;
      this.own = LampValues.of(bench.plan(), path.led());
      this.regulated =
          path.decoder().map(d -> d.said("function_output").is("current-regulated")).orElse(false);
    }

    String name() {
      return path.led().name();
    }

    /** Whether anything limits the current; unknown only where what is not stated might. */
    Standing limited() {
      if (!path.resistors().isEmpty() || regulated || own.seriesOhms().isKnown()) {
        return Standing.FINE;
      }
      List<Want> wants = new ArrayList<>(Standing.wants(own.seriesOhms()));
      path.decoder().ifPresent(d -> wants.addAll(Standing.wants(d.said("function_output"))));
      return wants.isEmpty() ? Standing.of("bare") : Standing.open(wants);
    }

    String limiter() {
      if (!path.resistors().isEmpty()) {
        return path.resistors().stream().map(Device::name).collect(Collectors.joining(" and "));
      }
      return own.seriesOhms().isKnown()
          ? "its built-in resistor"
          : regulated ? "the output's own regulator" : "nothing";
    }

    String fitting() {
      return LedResistor.of(name(), fullVolts(), forward(true), own.amps(), builtIn()).words();
    }

    /** What feeds LED and resistor together, at most; absent where nothing does. */
    Amount fullVolts() {
      Amount fed = noLoad.volts(path.plus());
      return fed.isAbsent() ? noLoad.patternWanted().orElse(fed) : switched(fed);
    }

    private Amount nominalVolts() {
      if (fullVolts().isMissing()) {
        return fullVolts();
      }
      LoadCase standing = new LoadCase(LoadCase.Charge.NOMINAL, LoadCase.Drive.STANDING);
      return path.decoder()
          .map(
              d ->
                  switched(bench.cases().volts(standing, d.name() + ".rail+", d.name() + ".rail-")))
          .orElseGet(() -> bench.cases().volts(standing, path.plus(), path.minus()));
    }

    /** Of the volts of a decoder's rail, what its function outputs pass on. */
    private Amount switched(Amount rail) {
      if (path.decoder().isEmpty()) {
        return rail;
      }
      Fitted decoder = path.decoder().get();
      Amount supply = decoder.amount("function_supply_volts");
      Amount top =
          supply.isMissing()
              ? supply
              : supply.isAbsent() ? rail : Cases.least(List.of(supply, rail));
      return Amount.computed(
          "volts for " + name() + " and its resistor",
          Unit.VOLTS,
          "volts of the common - output's drop",
          v -> v[0] - v[1],
          top,
          decoder.amount("function_drop_volts"));
    }

    /**
     * Forward volts of all LEDs in series.
     *
     * @param byColour whether the published range of the colour may stand in: it holds for a single
     *     LED, and several inside one part have more, so it serves where more volts only do good
     */
    private Amount forward(boolean byColour) {
      List<Amount> all = new ArrayList<>(List.of(forward(own, byColour)));
      for (Device other : path.series()) {
        all.add(forward(LampValues.of(bench.plan(), other), byColour));
      }
      return all.size() == 1
          ? all.get(0)
          : Amount.sum(name() + ": forward volts in series", Unit.VOLTS, all);
    }

    private static Amount forward(LampValues led, boolean byColour) {
      Optional<Amount> colour =
          led.device()
              .part()
              .flatMap(p -> LedColour.of(p.said("colour").or("")))
              .map(c -> c.forwardVolts(led.device().name()));
      return byColour && colour.isPresent()
          ? led.forwardVolts().orElse(colour.get())
          : led.forwardVolts();
    }

    Amount fullAmps() {
      return amps("pack full", fullVolts(), forward(true));
    }

    Amount nominalAmps() {
      return amps("pack at nominal volts", nominalVolts(), forward(false));
    }

    private Amount amps(String when, Amount volts, Amount forward) {
      if (!limited().word().equals("fine")) {
        return limited().wants().isEmpty()
            ? new Amount.Absent(name() + ": current")
            : new Amount.Missing(limited().wants());
      }
      String label = name() + ": current, " + when;
      Amount byResistor =
          path.resistors().isEmpty() && !own.seriesOhms().isKnown()
              ? new Amount.Absent(label)
              : throughResistor(label, volts, forward);
      Amount held = held();
      return held.isAbsent()
          ? byResistor
          : byResistor.isAbsent() ? held : Cases.least(List.of(byResistor, held));
    }

    private Amount throughResistor(String label, Amount volts, Amount forward) {
      int side = path.beside().size();
      return Amount.computed(
          label,
          Unit.AMPS,
          side == 1
              ? "(volts - forward volts) / resistance"
              : "(volts - forward volts) / (resistance x " + side + " LEDs side by side)",
          v -> Math.max(0, v[0] - v[1]) / (v[2] * side + v[3]),
          volts,
          forward,
          Amount.sum(name() + ": resistors", Unit.OHMS, shared()),
          builtIn());
    }

    private List<Amount> shared() {
      List<Amount> ohms = new ArrayList<>();
      for (Device resistor : path.resistors()) {
        ohms.add(resistor.part().orElseThrow().amount("resistance_ohms"));
      }
      if (ohms.isEmpty()) {
        ohms.add(Plan.fixed(0, Unit.OHMS, name() + ": no resistor outside it", "none in its lead"));
      }
      return ohms;
    }

    private Amount builtIn() {
      List<Amount> ohms = new ArrayList<>(List.of(own.seriesOhms()));
      for (Device other : path.series()) {
        ohms.add(LampValues.of(bench.plan(), other).seriesOhms());
      }
      return Amount.sum(name() + ": resistors built in", Unit.OHMS, ohms);
    }

    /** What a regulated output lets through one LED; absent for a plain switch. */
    private Amount held() {
      if (path.decoder().isEmpty()) {
        return new Amount.Absent(name() + ": regulated current");
      }
      Fitted decoder = path.decoder().get();
      if (decoder.said("function_output") instanceof Said.Unsaid unsaid) {
        return new Amount.Missing(List.of(unsaid.want()));
      }
      Amount held = decoder.amount("function_regulated_milliamps");
      if (!regulated) {
        return new Amount.Absent(name() + ": regulated current");
      }
      return held.isAbsent()
          ? Amount.missing(
              decoder.name(),
              "function_regulated_milliamps",
              "its outputs are stated to hold a current; the data sheet says which")
          : held.times(
              1.0 / path.beside().size(),
              name() + ": share of the output's current",
              "current / LEDs side by side");
    }
  }
}
