package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.LoadCase;
import outshop.circuit.PackValues;
import outshop.circuit.SpeakerValues;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * What the parts of a bay turn into heat, by load case: the pack in its own resistance, receiver,
 * decoder and regulator in what they drop and draw, amplifier and speaker in the sound, lamps and
 * smoke heaters all they take.
 */
final class BayLosses {
  private final Plan plan;
  private final Cases cases;
  private final Bay bay;
  private final List<Function<LoadCase, Amount>> losses = new ArrayList<>();

  BayLosses(Bench bench, Bay bay) {
    this.plan = bench.plan();
    this.cases = bench.cases();
    this.bay = bay;
    for (Fitted part : plan.parts()) {
      if (Bay.bayOf(plan, part).equals(Optional.of(bay.name()))) {
        add(part);
      }
    }
  }

  /** Whether nothing in the bay gets warm by itself. */
  boolean none() {
    return losses.isEmpty();
  }

  Amount watts(LoadCase loadCase) {
    return Amount.sum(
        bay.name() + ": heat, " + loadCase.words(),
        Unit.WATTS,
        losses.stream().map(l -> l.apply(loadCase)).toList());
  }

  private void add(Fitted part) {
    String name = part.name();
    switch (part.kind()) {
      case PACK -> losses.add(c -> inPack(part, c));
      case RECEIVER -> elements(name, name + " own");
      case DECODER -> {
        elements(name, name + " motor", name + " own");
        plan.names("outputs").forEach(out -> elements(name + " " + out));
        sound(part);
      }
      case REGULATOR -> losses.add(c -> inRegulator(part, c));
      case SPEAKER -> amplifier().ifPresent(d -> losses.add(c -> inSpeaker(part, d, c)));
      case BULB, LED, RESISTOR, SMOKE_HEATER -> elements(name);
      default -> {
        // Contacts, switches and fuses lose next to nothing.
      }
    }
  }

  private void elements(String... names) {
    for (String name : names) {
      losses.add(c -> cases.watts(c, name));
    }
  }

  private Amount inPack(Fitted pack, LoadCase loadCase) {
    return Amount.computed(
        pack.name() + ": heat inside, " + loadCase.words(),
        Unit.WATTS,
        "current squared x internal resistance",
        v -> v[0] * v[0] * v[1],
        cases.amps(loadCase, pack.name()),
        PackValues.of(pack).ohms());
  }

  /** A linear one turns the volts between in and out into heat, a switching one what it lacks. */
  private Amount inRegulator(Fitted regulator, LoadCase loadCase) {
    Amount taken = cases.watts(loadCase, regulator.name());
    Amount efficiency = regulator.amount("efficiency_percent");
    String label = regulator.name() + ": heat, " + loadCase.words();
    if (efficiency.isAbsent() || regulator.said("style").is("linear")) {
      return Amount.computed(
          label,
          Unit.WATTS,
          "power in - current x output volts",
          v -> Math.max(0, v[0] - v[1] * v[2]),
          taken,
          cases.amps(loadCase, regulator.name()),
          regulator.amount("output_volts"));
    }
    return Amount.computed(
        label,
        Unit.WATTS,
        "power in x (1 - efficiency)",
        v -> v[0] * (1 - v[1]),
        taken,
        efficiency);
  }

  /** The decoder that drives the speakers, if one makes sound. */
  private Optional<Fitted> amplifier() {
    return plan.parts(Kind.DECODER).stream().filter(d -> d.said("sound").is("yes")).findFirst();
  }

  private void sound(Fitted decoder) {
    if (decoder.said("sound").is("yes") && !SpeakerValues.of(plan).members().isEmpty()) {
      losses.add(
          c ->
              Amount.computed(
                  decoder.name() + ": heat of the amplifier, " + c.words(),
                  Unit.WATTS,
                  "power of the sound x (1 - efficiency)",
                  v -> v[0] * (1 - v[1]),
                  cases.watts(c, decoder.name() + " sound"),
                  decoder.amount("amplifier_efficiency_percent")));
    }
  }

  /** Hardly any of it leaves a speaker as sound. Several are taken to share it evenly. */
  private Amount inSpeaker(Fitted speaker, Fitted decoder, LoadCase loadCase) {
    int count = SpeakerValues.of(plan).members().size();
    return Amount.computed(
        speaker.name() + ": heat, " + loadCase.words(),
        Unit.WATTS,
        "power of the sound x efficiency / number of speakers",
        v -> v[0] * v[1] / count,
        cases.watts(loadCase, decoder.name() + " sound"),
        decoder.amount("amplifier_efficiency_percent"));
  }
}
