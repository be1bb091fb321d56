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
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** Smoke heaters: what they draw, from which output, and what they sit beside. */
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
    for (Device heater : bench.circuit().devices(Device.Sort.SMOKE_HEATER)) {
      bench.plan().parts(Kind.PACK).forEach(pack -> facts.add(place(heater, pack)));
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

  private HeaterPlace place(Device heater, Fitted pack) {
    Plan plan = bench.plan();
    Said packBay = plan.said("parts." + pack.name() + ".bay");
    String bay = packBay.or("");
    boolean sameBay =
        !packBay.isUnsaid()
            && heater.part().isPresent()
            && plan.said("parts." + heater.name() + ".bay").is(bay);
    Optional<List<String>> beside =
        packBay.isUnsaid() ? Optional.empty() : plan.list("locomotive.bays." + bay + ".beside");
    Standing standing =
        sameBay || beside.map(names -> names.contains(heater.name())).orElse(false)
            ? Standing.of("beside")
            : beside.isPresent() ? Standing.FINE : Standing.open(placeUnsaid(packBay, bay));
    return new HeaterPlace(Places.of(heater), standing, pack.name(), bay.isEmpty() ? "bay" : bay);
  }

  private List<Want> placeUnsaid(Said packBay, String bay) {
    return packBay.isUnsaid()
        ? Standing.wants(packBay)
        : Standing.wants(bench.plan().said("locomotive.bays." + bay + ".beside"));
  }
}
