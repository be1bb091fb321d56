package outshop.render.plot;

import java.util.ArrayList;
import java.util.List;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Want;

/** A plot in sentences. */
final class Summary {
  private Summary() {}

  static String of(Plot plot) {
    List<String> sentences = new ArrayList<>();
    for (Row row : plot.rows()) {
      String sentence =
          switch (plot.subject()) {
            case VOLTAGE_WINDOWS -> WindowsDrawing.sentence(row);
            case CURRENT_LADDER -> LadderDrawing.sentence(row);
            default -> points(row);
          };
      sentences.add(sentence);
    }
    plot.remarks().forEach(r -> sentences.add(Texts.apart(r)));
    List<Amount.Known> assumed = plot.assumptions();
    if (!assumed.isEmpty()) {
      sentences.add(
          "Assumed, so drawn as ranges: "
              + String.join("; ", assumed.stream().map(a -> Texts.apart(a.label())).toList())
              + ".");
    }
    for (Want want : plot.wants()) {
      sentences.add(
          "Cannot tell without %s: %s."
              .formatted(Texts.apart(want.name()), Texts.apart(want.how())));
    }
    return String.join(" ", sentences);
  }

  private static String points(Row row) {
    List<String> words = new ArrayList<>();
    for (Mark mark : row.marks()) {
      if (mark.isKnown()) {
        words.add(point(mark, Rows.known(row)));
      }
    }
    return Texts.apart(row.name())
        + ": "
        + (words.isEmpty() ? "cannot tell" : String.join(", ", words))
        + ".";
  }

  private static String point(Mark mark, List<Amount.Known> beside) {
    Amount.Known value = mark.amount().get();
    String said = mark.meaning().words() + " " + Numbers.text(value, beside) + Numbers.range(value);
    boolean gate = mark.meaning() == Meaning.SHORTEST || mark.meaning() == Meaning.LONGEST;
    return mark.along()
        .map(along -> (gate ? "at " : "") + AmountText.text(along.get()) + " " + said)
        .orElse(said);
  }
}
