package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
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

/** Volts at filament lamps and smoke heaters, the locomotive's own and fitted ones. */
final class LampFeeds {
  private final Bench bench;
  private final NoLoad noLoad;

  LampFeeds(Bench bench, NoLoad noLoad) {
    this.bench = bench;
    this.noLoad = noLoad;
  }

  List<Object> all() {
    List<Object> facts = new ArrayList<>();
    for (Device device : bench.circuit().devices()) {
      if (!fed(device)
          && (FunctionOutput.feeding(bench, device.name()).isEmpty()
              || noLoad.patternWanted().isEmpty())) {
        continue;
      }
      if (device.sort() == Device.Sort.BULB) {
        facts.add(bulb(device));
      } else if (device.sort() == Device.Sort.SMOKE_HEATER) {
        LampValues heater = LampValues.of(bench.plan(), device);
        Amount full = volts(heater, LoadCase.Charge.FULL, share -> share);
        facts.add(new HeaterFeed(Places.of(device), full, heater.ratedVolts()));
      }
    }
    return facts;
  }

  private BulbFeed bulb(Device device) {
    LampValues lamp = LampValues.of(bench.plan(), device);
    return new BulbFeed(
        Places.of(device),
        volts(lamp, LoadCase.Charge.FULL, FilamentLaws::voltsShare),
        volts(lamp, LoadCase.Charge.NOMINAL, FilamentLaws::voltsShare),
        filament(device).orElse(lamp.ratedVolts()));
  }

  /** What is missing where a lamp is not known to be a filament. */
  private Optional<Amount> filament(Device device) {
    if (device.part().isPresent()) {
      return Optional.empty();
    }
    Said kind = bench.plan().said("locomotive.lamps." + device.name() + ".kind");
    if (kind.is("filament")) {
      return Optional.empty();
    }
    return Optional.of(
        kind instanceof Said.Unsaid unsaid
            ? new Amount.Missing(List.of(unsaid.want()))
            : Amount.missing(
                device.name(), "kind", "compare the ohmmeter's readings both ways round"));
  }

  private boolean fed(Device device) {
    return !noLoad.volts(device.terminal("a")).isAbsent()
        || !noLoad.volts(device.terminal("b")).isAbsent();
  }

  /**
   * Volts at a lamp, locomotive standing.
   *
   * @param forced volts / rated volts at a share of the rated current, for an output that holds a
   *     current
   */
  private Amount volts(LampValues lamp, LoadCase.Charge charge, DoubleUnaryOperator forced) {
    Device device = lamp.device();
    if (!fed(device)) {
      return noLoad.patternWanted().orElseThrow();
    }
    LoadCase standing = new LoadCase(charge, LoadCase.Drive.STANDING);
    Amount solved = size(bench.cases().volts(standing, device.terminal("a"), device.terminal("b")));
    Optional<FunctionOutput> output = FunctionOutput.feeding(bench, device.name());
    if (output.isEmpty()) {
      return solved;
    }
    Amount free = freeVolts(lamp, output.get(), standing, solved);
    Fitted decoder = output.get().decoder();
    if (decoder.said("function_output") instanceof Said.Unsaid unsaid) {
      return new Amount.Missing(List.of(unsaid.want()));
    }
    return decoder.said("function_output").is("current-regulated")
        ? forcedVolts(lamp, decoder, free, forced)
        : free;
  }

  /** Volts at a lamp whose output is a plain switch. */
  private Amount freeVolts(
      LampValues lamp, FunctionOutput output, LoadCase standing, Amount solved) {
    Amount supply = output.decoder().amount("function_supply_volts");
    if (supply.isMissing()) {
      return supply;
    }
    boolean lumped = bench.plan().amount("measured.lamps").isKnown();
    if (supply.isAbsent() && !lumped) {
      return solved;
    }
    String decoder = output.decoder().name();
    Amount rail = bench.cases().volts(standing, decoder + ".rail+", decoder + ".rail-");
    Amount top = supply.isAbsent() ? rail : Cases.least(List.of(supply, rail));
    return Amount.computed(
        "volts at " + lamp.device().name() + ", " + standing.words(),
        Unit.VOLTS,
        "function supply - output's drop - resistor's drop",
        v -> Math.max(0, v[0] - v[1] - v[2]),
        top,
        output.decoder().amount("function_drop_volts"),
        resistorVolts(lamp, output));
  }

  private Amount resistorVolts(LampValues lamp, FunctionOutput output) {
    return output
        .resistor(bench)
        .map(
            r ->
                Amount.computed(
                    r.name() + ": drop",
                    Unit.VOLTS,
                    "resistance x the lamp's current",
                    v -> v[0] * v[1],
                    r.amount("resistance_ohms"),
                    lamp.ampsOrUsual()))
        .orElse(Plan.fixed(0, Unit.VOLTS, "resistor's drop", "there is no resistor"));
  }

  /** Volts at a lamp whose output holds a current, as far as the volts there are allow it. */
  private static Amount forcedVolts(
      LampValues lamp, Fitted decoder, Amount free, DoubleUnaryOperator forced) {
    Amount held = decoder.amount("function_regulated_milliamps");
    if (held.isAbsent()) {
      return Amount.missing(
          decoder.name(),
          "function_regulated_milliamps",
          "its outputs are stated to hold a current; the data sheet says which");
    }
    return Amount.computed(
        "volts at " + lamp.device().name() + " at the output's regulated current",
        Unit.VOLTS,
        "rated volts x what the share of its current calls for, at most what is there",
        v -> Math.min(v[0], v[1] * forced.applyAsDouble(v[2] / v[3])),
        free,
        lamp.ratedVolts(),
        held,
        lamp.amps());
  }

  /** Volts as a size: a lamp does not mind which way round it is wired. */
  private static Amount size(Amount volts) {
    return volts instanceof Amount.Known k && k.value() < 0
        ? Amount.computed(k.label(), k.unit(), k.how(), v -> Math.abs(v[0]), k)
        : volts;
  }
}
