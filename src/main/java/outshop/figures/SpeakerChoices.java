package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.circuit.SpeakerValues;
import outshop.input.Place;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * What is fitted to the plan's amplifier, its rated load, and the speakers that could hang there
 * instead, each against a reference: what is fitted, or the rated load where nothing is.
 */
public final class SpeakerChoices {
  private final Fitted decoder;
  private final List<SpeakerValues.Member> members;
  private final SpeakerValues fitted;
  private final Amount referenceOhms;
  private final Amount referenceSensitivity;

  private SpeakerChoices(Fitted decoder, SpeakerValues fitted) {
    this.decoder = decoder;
    this.fitted = fitted;
    this.members = fitted.members();
    this.referenceOhms = members.isEmpty() ? decoder.amount("rated_ohms") : fitted.ohms();
    this.referenceSensitivity = sensitivity();
  }

  /**
   * What is fitted, the rated load, then the others in their order. None where the plan has no
   * decoder with sound.
   *
   * @param others speakers of a catalogue
   */
  public static List<SpeakerChoice> of(Bench bench, List<Part> others) {
    Optional<Fitted> decoder = bench.first(Kind.DECODER).filter(d -> !d.said("sound").is("no"));
    return decoder
        .map(d -> new SpeakerChoices(d, SpeakerValues.of(bench.plan())).all(others))
        .orElse(List.of());
  }

  private List<SpeakerChoice> all(List<Part> others) {
    List<SpeakerChoice> choices = new ArrayList<>();
    if (!members.isEmpty()) {
      choices.add(fittedChoice());
    }
    choices.add(ratedLoad());
    for (Part part : others) {
      boolean alone =
          members.size() == 1
              && members.get(0).part().filter(f -> f.part().equals(part)).isPresent();
      if (!alone) {
        choices.add(other(part));
      }
    }
    return choices;
  }

  private SpeakerChoice fittedChoice() {
    boolean single = members.size() == 1;
    String name = String.join(" + ", members.stream().map(SpeakerValues.Member::name).toList());
    return choice(
        new Row(
            name,
            members.get(0).part().filter(p -> single).map(p -> p.part().title()).orElse(name),
            SpeakerChoice.Role.FITTED),
        fitted,
        referenceSensitivity,
        single ? members.get(0).watts() : new Amount.Absent("several speakers share"));
  }

  private SpeakerChoice ratedLoad() {
    Amount none = new Amount.Absent("a bare load");
    return choice(
        new Row("rated load", "rated load of " + decoder.name(), SpeakerChoice.Role.RATED_LOAD),
        new SpeakerValues(List.of(), decoder.amount("rated_ohms")),
        none,
        none);
  }

  private SpeakerChoice other(Part part) {
    Fitted speaker = new Fitted(part.id(), part, Place.whole(part.id()));
    Amount ohms = speaker.amount("impedance_ohms");
    return choice(
        new Row(part.id(), part.title(), SpeakerChoice.Role.OTHER),
        new SpeakerValues(List.of(), ohms),
        speaker.amount("sensitivity_db_spl"),
        speaker.amount("watts"));
  }

  /** Of a single fitted part; that of several together, or of an old one, nobody states. */
  private Amount sensitivity() {
    Optional<Fitted> part = members.size() == 1 ? members.get(0).part() : Optional.empty();
    return part.map(p -> p.amount("sensitivity_db_spl"))
        .orElseGet(
            () ->
                Amount.missing(
                    members.isEmpty() ? "speaker" : members.get(0).name(),
                    "sensitivity_db_spl",
                    "a sound level meter one metre away, at one watt"));
  }

  private record Row(String name, String title, SpeakerChoice.Role role) {}

  private SpeakerChoice choice(
      Row row, SpeakerValues speakers, Amount sensitivity, Amount ratedWatts) {
    Amount byLoad =
        Amount.computed(
            row.name() + ": louder by its load",
            Unit.DECIBELS,
            "10 x log10(reference impedance / impedance)",
            v -> 10 * Math.log10(v[0] / v[1]),
            referenceOhms,
            speakers.ohms());
    Amount bySensitivity =
        Amount.computed(
            row.name() + ": louder by its load and sensitivity",
            Unit.DECIBELS,
            "louder by its load + its sensitivity - that of what is fitted",
            v -> v[0] + v[1] - v[2],
            byLoad,
            sensitivity,
            referenceSensitivity);
    return new SpeakerChoice(
        row.name(),
        row.title(),
        row.role(),
        speakers.ohms(),
        decoder.amount("speaker_min_ohms"),
        byLoad,
        bySensitivity,
        speakers.amplifierWatts(decoder).named(row.name() + ": power it gets"),
        ratedWatts);
  }
}
