package outshop.plots;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import outshop.catalogue.Part;
import outshop.figures.Bench;
import outshop.figures.SpeakerChoice;
import outshop.figures.SpeakerChoices;
import outshop.units.Amount;
import outshop.units.AmountText;

/** How loud what is fitted is against other speakers on the same amplifier. */
final class Loudness {
  private Loudness() {}

  static Plot of(Bench bench, List<Part> speakers) {
    List<Row> first = new ArrayList<>();
    List<Row> others = new ArrayList<>();
    List<String> tooLow = new ArrayList<>();
    String least = "";
    for (SpeakerChoice choice : SpeakerChoices.of(bench, speakers)) {
      if (choice.role() != SpeakerChoice.Role.OTHER) {
        first.add(row(choice));
      } else if (choice.loadsTooMuch()) {
        tooLow.add(choice.name());
        least = AmountText.text(choice.leastOhms().get());
      } else {
        others.add(row(choice));
      }
    }
    List<String> remarks = new ArrayList<>();
    if (!tooLow.isEmpty()) {
      remarks.add(
          "Not drawn, as the amplifier stands no less than %s: %s."
              .formatted(least, String.join(", ", tooLow)));
    }
    if (!first.isEmpty()) {
      boolean fitted = first.size() > 1;
      remarks.add("0 dB is " + (fitted ? "what is fitted." : "the amplifier's rated load."));
    } else {
      remarks.add("The plan has no decoder with sound, so no speaker is heard.");
    }
    others.sort(Comparator.comparingDouble(Loudness::quietness).thenComparing(Row::name));
    first.addAll(others);
    return new Plot(Plot.Subject.LOUDNESS, "", first, remarks);
  }

  /** What is not known comes last. */
  private static double quietness(Row row) {
    return row.known(Meaning.BY_ALL)
        .or(() -> row.known(Meaning.BY_LOAD))
        .map(known -> -known.value())
        .orElse(Double.MAX_VALUE);
  }

  private static Row row(SpeakerChoice choice) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.of(Meaning.OHMS, choice.ohms()));
    marks.add(Mark.of(Meaning.BY_LOAD, choice.byLoadDecibels()));
    marks.add(Mark.of(Meaning.BY_ALL, choice.byAllDecibels()));
    marks.add(Mark.of(Meaning.GETS_WATTS, choice.watts()));
    marks.add(Mark.of(Meaning.TAKES_WATTS, choice.ratedWatts()));
    marks.removeIf(m -> m.amount() instanceof Amount.Absent);
    boolean fitted = choice.role() == SpeakerChoice.Role.FITTED;
    return new Row(
        fitted ? choice.name() + " (fitted)" : choice.name(),
        choice.title().equals(choice.name())
            ? choice.name()
            : choice.name() + " (" + choice.title() + ")",
        marks);
  }
}
