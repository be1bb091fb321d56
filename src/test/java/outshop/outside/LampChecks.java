package outshop.outside;

import java.util.ArrayList;
import java.util.List;
import outshop.circuit.Places;
import outshop.circuit.Station;
import outshop.figures.BulbFeed;
import outshop.figures.Laws;
import outshop.figures.OutputLoad;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;

/** Filaments at other than their rated volts, and in the moment they are switched on. */
final class LampChecks {
  private final CheckList list = new CheckList("lamp");

  private LampChecks() {}

  static List<OutsideCheck> all() {
    LampChecks checks = new LampChecks();
    checks.rerated();
    checks.cold();
    return checks.list.all();
  }

  private void rerated() {
    list.from(
        "D. G. Fink, H. W. Beaty (eds.), Standard Handbook for Electrical Engineers, 11th ed. 1978,"
            + " p. 22-8 (second-hand): current x^0.55, light x^3.4, life x^-12 to x^-16; worked"
            + " out from these");
    rerated("0.9", "0.9437", "3.54", "5.40");
    rerated("0.8", "0.8845", "14.55", "35.5");
    rerated("1.1", "1.0538", "0.218", "0.319");
    list.printed(
            "light-0.9",
            "light at 0.9 x its volts",
            "0.699",
            "",
            () -> bulb(0.9).light().get().value())
        .printed(
            "volts-back",
            "volts at which it draws 0.8845 x its current",
            "0.800",
            "",
            () -> Laws.filamentVolts(0.8845));
  }

  private void rerated(String share, String current, String leastLife, String mostLife) {
    double x = Double.parseDouble(share);
    String at = " at " + share + " x its volts";
    list.printed("current-" + share, "current" + at, current, "", () -> Laws.filamentCurrent(x))
        .printed(
            "least-life-" + share,
            "life" + at + ", least",
            leastLife,
            "",
            () -> bulb(x).leastLife().get().value())
        .printed(
            "most-life-" + share,
            "life" + at + ", most",
            mostLife,
            "",
            () -> bulb(x).mostLife().get().value());
  }

  private void cold() {
    list.from(Sources.COLLEGE + "section 20.4, module m42714, headlight")
        .printed("cold", "0.350 ohm cold on 12.0 V", "34.3", "A", () -> inrush("0.350").amps());
    list.from(Sources.COLLEGE + "section 21.1, module m42356, examples")
        .printed(
            "cold-together",
            "1, 6, 13 ohm cold side by side on 12.0 V",
            "14.92",
            "A",
            () -> inrush("1.00", "6.00", "13.0").amps())
        .printed(
            "cold-behind-resistor",
            "1 ohm before 6 and 13 ohm cold on 12.0 V",
            "2.35",
            "A",
            () -> inrush("6.00", "13.0").behind("1.00").amps());
    list.from(
            "a filament that reads 25.5 ohm draws 0.27 A at first on 7 V: common practice, no"
                + " source")
        .printed(
            "cold-bench", "25.5 ohm cold on 7 V", "0.27", "A", () -> inrush("25.5").on(7).amps());
  }

  private static BulbFeed bulb(double share) {
    return new BulbFeed(
        Places.at(Station.LIGHTS, "bulb"), volts(16 * share), volts(16 * share), volts(16));
  }

  private static Amount volts(double value) {
    return Amount.known(value, Unit.VOLTS, Origin.MEASURED, value + " V", "stated");
  }

  private static Output inrush(String... coldOhms) {
    return Output.of(coldOhms).on(12);
  }

  /** A function output with cold filaments on it. */
  private record Output(Trial plan) {
    static Output of(String... coldOhms) {
      Trial plan = Trial.base();
      List<String> names = new ArrayList<>();
      for (String ohms : coldOhms) {
        String name = "lamp-" + ohms.replace('.', '-');
        String lamp = "locomotive.lamps." + name + ".";
        plan.with(lamp + "kind", "filament")
            .with(lamp + "forward", ohms + " ohm")
            .with(lamp + "reverse", ohms + " ohm")
            .with(lamp + "rated", "16 V")
            .with(lamp + "amps", "60 mA");
        names.add(name);
      }
      return new Output(plan.with("outputs.out-1.feeds", names));
    }

    /** The output gives so many volts. */
    Output on(int volts) {
      plan.with("parts.decoder.function_supply_volts", volts + 0.3 + " V")
          .with("parts.decoder.function_drop_volts", "0.3 V");
      return this;
    }

    Output behind(String ohms) {
      plan.with("parts.resistor.kind", "resistor")
          .with("parts.resistor.resistance_ohms", ohms + " ohm")
          .with("outputs.out-1.resistor", "resistor");
      return this;
    }

    double amps() {
      return plan.fact(OutputLoad.class, load -> !load.together()).inrushAmps().get().value();
    }
  }
}
