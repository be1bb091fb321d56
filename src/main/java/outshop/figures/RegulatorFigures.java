package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.LoadCase;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;

/** Amps and heat of regulators; the charging of hold-up capacitors. */
final class RegulatorFigures {
  private static final LoadCase FULL = new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING);

  private final Bench bench;
  private final Demands demands;

  private RegulatorFigures(Bench bench, Demands demands) {
    this.bench = bench;
    this.demands = demands;
  }

  static List<Object> of(Bench bench, Demands demands) {
    RegulatorFigures figures = new RegulatorFigures(bench, demands);
    List<Object> facts = new ArrayList<>();
    bench.plan().parts(Kind.REGULATOR).forEach(r -> facts.add(figures.load(r)));
    bench.plan().parts(Kind.CAPACITOR).forEach(c -> facts.add(figures.holdUp(c)));
    return facts;
  }

  private RegulatorLoad load(Fitted part) {
    Amount amps = outputAmps(part);
    Amount none = new Amount.Absent(part.name() + ": not linear");
    if (part.said("style") instanceof Said.Unsaid unsaid) {
      Amount unknown = new Amount.Missing(List.of(unsaid.want()));
      return new RegulatorLoad(Places.of(part), part, amps, unknown, unknown);
    }
    if (!part.said("style").is("linear")) {
      return new RegulatorLoad(Places.of(part), part, amps, none, none);
    }
    Amount volts = bench.cases().volts(FULL, part.name() + ".in+", part.name() + ".in-");
    Amount loss = lossWatts(part.name(), volts, part.amount("output_volts"), amps);
    Amount junction =
        junctionCelsius(part.name(), ambient(part), loss, part.amount("kelvin_per_watt"));
    return new RegulatorLoad(Places.of(part), part, amps, loss, junction);
  }

  /** What a linear regulator turns to heat: {@code (volts in - volts out) x current}. */
  static Amount lossWatts(String name, Amount inVolts, Amount outVolts, Amount amps) {
    return Amount.computed(
        name + ": heat",
        Unit.WATTS,
        "(volts in - volts out) x current",
        v -> Math.max(0, v[0] - v[1]) * v[2],
        inVolts,
        outVolts,
        amps);
  }

  /** How hot its inside gets: {@code surroundings + heat x thermal resistance}. */
  static Amount junctionCelsius(String name, Amount ambient, Amount watts, Amount kelvinPerWatt) {
    return Amount.computed(
        name + ": inside",
        Unit.CELSIUS,
        "surroundings + heat x thermal resistance",
        v -> v[0] + v[1] * v[2],
        ambient,
        watts,
        kelvinPerWatt);
  }

  private Amount ambient(Fitted part) {
    String bay = bench.plan().text("parts." + part.name() + ".bay").orElse("");
    Amount usual =
        Amount.assumed(
            40,
            20,
            60,
            Unit.CELSIUS,
            bay.isEmpty() ? part.name() + ": celsius of its bay" : bay + ": celsius",
            "not stated; usual in a closed body in summer");
    return bay.isEmpty()
        ? usual
        : bench.plan().amount("locomotive.bays." + bay + ".celsius").orElse(usual);
  }

  /** The currents of the wires at its output, at the worst. */
  private Amount outputAmps(Fitted part) {
    String out = part.name() + ".out+";
    boolean drives = feedsElectronics(out);
    List<Amount> wires = new ArrayList<>();
    for (Link link : bench.circuit().links()) {
      if (link.from().equals(out) || link.to().equals(out)) {
        wires.add(drives ? demands.sustained(link.name()) : demands.standing(link.name()));
      }
    }
    if (wires.isEmpty()) {
      return Amount.missing(
          "wiring", "wires from " + out, "list the wires from its output to what it feeds");
    }
    return Amount.sum(part.name() + ": load", Unit.AMPS, wires);
  }

  /** Whether receiver or decoder, and so the motor, hang on an output. */
  private boolean feedsElectronics(String out) {
    Joins running = new Joins(bench.circuit(), bench.circuit().running());
    return bench.plan().parts(Kind.RECEIVER).stream()
            .anyMatch(r -> running.joined(out, r.name() + ".in+"))
        || bench.plan().parts(Kind.DECODER).stream()
            .anyMatch(d -> running.joined(out, d.name() + ".in-a"));
  }

  private HoldUp holdUp(Fitted capacitor) {
    List<Amount> ohms = new ArrayList<>(List.of(capacitor.amount("series_milliohms")));
    Amount volts =
        bench
            .pack()
            .map(PackValues::fullVolts)
            .orElseGet(() -> Amount.missing("parts", "pack", "choose a pack"));
    bench.pack().map(PackValues::ohms).ifPresent(ohms::add);
    bench.first(Kind.RECEIVER).map(r -> r.amount("path_milliohms")).ifPresent(ohms::add);
    ohms.add(0, volts);
    Amount amps =
        Amount.computed(
            capacitor.name() + ": at most, when joined empty",
            Unit.AMPS,
            "pack full / (own + pack's + receiver's resistance)",
            v -> {
              double sum = 0;
              for (int i = 1; i < v.length; i++) {
                sum += v[i];
              }
              return v[0] / sum;
            },
            ohms);
    String words =
        amps instanceof Amount.Known k ? "up to " + AmountText.text(k) : "many times its share";
    Said limited = limited(capacitor);
    Amount shown = limited.is("no") ? amps : new Amount.Absent(capacitor.name() + ": limited");
    return new HoldUp(Places.of(capacitor), capacitor, limited, shown, words);
  }

  /** Whether capacitor or decoder limits the charging current. */
  private Said limited(Fitted capacitor) {
    Said own = capacitor.said("charge_limiter");
    Said decoders =
        bench
            .first(Kind.DECODER)
            .map(d -> d.said("hold_up_input"))
            .orElseGet(() -> new Said.Word("none", Origin.STANDARD, "no decoder"));
    if (own.is("yes") || decoders.is("limited")) {
      return new Said.Word("yes", Origin.PLAN, capacitor.name() + ": limited");
    }
    if (own.isUnsaid()) {
      return own;
    }
    return decoders.isUnsaid()
        ? decoders
        : new Said.Word("no", Origin.PLAN, capacitor.name() + ": limited");
  }
}
