package outshop.render.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;
import outshop.units.Unit;

/** Decibels against what is fitted: by impedance alone, and with the sensitivity counted. */
final class LoudnessDrawing {
  private static final double LANE = 16;
  private static final double ROW = 16 + LANE + 5;
  private static final int MOST_TICKS = 8;

  /** More speakers than this stand in the table alone. */
  private static final int MOST_ROWS = 16;

  private final Canvas canvas;
  private final Plot plot;
  private final List<Row> rows;

  private LoudnessDrawing(Canvas canvas, Plot plot) {
    this.canvas = canvas;
    this.plot = plot;
    this.rows = plot.rows().stream().limit(MOST_ROWS).toList();
  }

  static void draw(Canvas canvas, Plot plot) {
    new LoudnessDrawing(canvas, plot).all();
  }

  private void all() {
    if (rows.isEmpty()) {
      Rows.notes(canvas, plot);
      return;
    }
    Scale scale = scale();
    double top = canvas.y() + 16;
    double bottom = top + rows.size() * ROW;
    Rows.verticals(
        canvas, scale, Ticks.linear(scale.low(), scale.high(), MOST_TICKS), "dB", top, bottom);
    canvas.line(scale.at(0), top, scale.at(0), bottom, "none", 1);
    canvas.down(18);
    rows.forEach(row -> row(row, scale));
    canvas.down(20);
    canvas.key(List.of(Canvas.Entry.of(Meaning.BY_LOAD), Canvas.Entry.of(Meaning.BY_ALL)));
    canvas.note("To the right is louder.");
    if (plot.rows().size() > MOST_ROWS) {
      canvas.note((plot.rows().size() - MOST_ROWS) + " more stand in the table.");
    }
    Rows.notes(canvas, plot);
  }

  private Scale scale() {
    double[] ends =
        rows.stream()
            .flatMap(r -> Rows.known(r).stream())
            .filter(k -> k.unit() == Unit.DECIBELS)
            .flatMapToDouble(k -> Arrays.stream(new double[] {k.low(), k.high()}))
            .filter(Double::isFinite)
            .toArray();
    double low = Math.min(-3, Arrays.stream(ends).min().orElse(0) - 1);
    double high = Math.max(3, Arrays.stream(ends).max().orElse(0) + 1);
    return Scale.linear(low, high, Canvas.LEFT + 6, Canvas.RIGHT - 6);
  }

  private void row(Row row, Scale scale) {
    Rows.label(canvas, row, words(row));
    double at = canvas.y() + LANE / 2;
    List<Mark> drawn = new ArrayList<>();
    for (Meaning meaning : List.of(Meaning.BY_LOAD, Meaning.BY_ALL)) {
      row.find(meaning).filter(Mark::isKnown).ifPresent(drawn::add);
    }
    if (drawn.isEmpty()) {
      canvas.text("cannot tell", scale.at(0) + 8, at + 4, "start", Canvas.SMALL, 150);
    }
    for (Mark mark : drawn) {
      canvas.line(scale.at(0), at, scale.at(mark.amount().get().value()), at, "none", 1);
      canvas.range(scale, mark.amount().get(), at);
    }
    for (Mark mark : drawn) {
      canvas.sign(row, mark, scale.at(mark.amount().get().value()), at);
    }
    canvas.down(ROW - 16);
  }

  private static String words(Row row) {
    List<String> words = new ArrayList<>();
    add(words, row, Meaning.OHMS, "");
    add(words, row, Meaning.GETS_WATTS, "gets ");
    add(words, row, Meaning.TAKES_WATTS, "takes ");
    return String.join(", ", words);
  }

  private static void add(List<String> words, Row row, Meaning meaning, String before) {
    row.find(meaning)
        .ifPresent(
            mark ->
                words.add(
                    before
                        + (mark.amount() instanceof Amount.Known k
                            ? Numbers.text(k, Rows.known(row))
                            : "?")));
  }
}
