package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Device;
import outshop.circuit.LampValues;
import outshop.circuit.LoadCase;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/** Smoke heaters: what they draw, and from which output. */
final class SmokeFigures {
  private static final LoadCase CRUISING =
      new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.CRUISING);

  private final Bench bench;
  private final List<Object> facts = new ArrayList<>();

  SmokeFigures(Bench bench, NoLoad noLoad) {
    this.bench = bench;
    for (Object fed : new LampFeeds(bench, noLoad).all()) {
      if (fed instanceof HeaterFeed heater) {
        bench.circuit().device(heater.at().name()).ifPresent(d -> fed(d, heater.fullVolts()));
      }
    }
  }

  List<Object> all() {
    return facts;
  }

  private void fed(Device heater, Amount volts) {
    Amount amps = amps(heater, volts);
    FunctionOutput.feeding(bench, heater.name())
        .ifPresent(
            o ->
                facts.add(
                    new HeaterOutput(
                        Places.of(heater),
                        amps,
                        o.name() + " of " + o.decoder().name(),
                        o.decoder().amount("function_amps"))));
    Amount watts =
        Amount.computed(
            heater.name() + ": power, pack full",
            Unit.WATTS,
            "volts x current",
            v -> v[0] * v[1],
            volts,
            amps);
    facts.add(new HeaterShare(Places.of(heater), watts, packWatts()));
  }

  /** What it draws at some volts: its wire's resistance hardly changes as it warms. */
  private Amount amps(Device heater, Amount volts) {
    Amount wire =
        Readings.amps(heater.name() + ": current of its wire, pack full", volts, ohms(heater));
    Amount fan =
        heater
            .part()
            .map(part -> part.amount("fan_milliamps"))
            .orElse(new Amount.Absent(heater.name() + ": fan"));
    return fan.isAbsent()
        ? wire
        : Amount.sum(heater.name() + ": wire and fan", Unit.AMPS, List.of(wire, fan));
  }

  private Amount ohms(Device heater) {
    Optional<Amount> stated =
        heater.part().map(part -> part.amount("resistance_ohms")).filter(Amount::isKnown);
    LampValues values = LampValues.of(bench.plan(), heater);
    return stated.orElseGet(
        () ->
            Amount.computed(
                heater.name() + ": resistance",
                Unit.OHMS,
                "rated volts / rated current",
                v -> v[0] / v[1],
                values.ratedVolts(),
                values.amps()));
  }

  private Amount packWatts() {
    List<Amount> all = new ArrayList<>();
    for (Fitted pack : bench.plan().parts(Kind.PACK)) {
      all.add(
          Amount.computed(
              pack.name() + ": power, " + CRUISING.words(),
              Unit.WATTS,
              "volts x current",
              v -> v[0] * v[1],
              bench.cases().volts(CRUISING, pack.name() + ".plus", pack.name() + ".minus"),
              bench.cases().amps(CRUISING, pack.name())));
    }
    return all.size() == 1
        ? all.get(0)
        : Amount.sum("power of all packs, " + CRUISING.words(), Unit.WATTS, all);
  }
}
