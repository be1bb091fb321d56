package outshop.render.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;
import outshop.units.AmountText;

/** Amps on a logarithmic scale: a bar up to what may flow, signs for what flows. */
final class LadderDrawing {
  /** A logarithmic scale has no room for nothing; less than this is not drawn. */
  private static final double NOTHING_AMPS = 1e-6;

  private static final double BAR = 16;
  private static final double ROW = 16 + BAR + 7;
  private static final List<Meaning> FLOWS =
      List.of(Meaning.CRUISING, Meaning.SLIPPING, Meaning.BLOCKED);

  private final Canvas canvas;
  private final Plot plot;

  private LadderDrawing(Canvas canvas, Plot plot) {
    this.canvas = canvas;
    this.plot = plot;
  }

  static void draw(Canvas canvas, Plot plot) {
    new LadderDrawing(canvas, plot).all();
  }

  private void all() {
    Scale scale = scale();
    double top = canvas.y() + 16;
    double bottom = top + plot.rows().size() * ROW;
    List<Double> ticks = Ticks.logarithmic(scale.low(), scale.high());
    Rows.verticals(canvas, scale, ticks, "A", top, bottom);
    canvas.down(18);
    plot.rows().forEach(row -> row(row, scale));
    canvas.down(20);
    canvas.key(key());
    Rows.notes(canvas, plot);
  }

  private Scale scale() {
    double[] ends =
        plot.rows().stream()
            .flatMap(r -> Rows.known(r).stream())
            .flatMapToDouble(k -> Arrays.stream(new double[] {k.low(), k.value(), k.high()}))
            .filter(a -> Double.isFinite(a) && a > NOTHING_AMPS)
            .toArray();
    double low = Arrays.stream(ends).min().orElse(0.1);
    double high = Arrays.stream(ends).max().orElse(10);
    return Scale.logarithmic(low / 1.4, high * 1.25, Canvas.LEFT, Canvas.RIGHT - 4);
  }

  private void row(Row row, Scale scale) {
    Rows.label(canvas, row, may(row));
    double middle = canvas.y() + BAR / 2;
    bar(row, Meaning.PEAK, scale, true);
    bar(row, Meaning.CONTINUOUS, scale, false);
    List<Mark> known =
        row.marks().stream().filter(m -> FLOWS.contains(m.meaning()) && m.isKnown()).toList();
    List<Mark> flowing =
        known.stream().filter(m -> m.amount().get().value() > NOTHING_AMPS).toList();
    for (Mark mark : flowing) {
      canvas.range(scale, mark.amount().get(), middle);
    }
    for (Mark mark : flowing) {
      canvas.sign(row, mark, scale.at(mark.amount().get().value()), middle);
    }
    if (known.isEmpty()) {
      canvas.text(
          "cannot tell what flows", Canvas.LEFT + 4, middle + 4, "start", Canvas.SMALL, 200);
    }
    canvas.down(ROW - 16);
  }

  private static String may(Row row) {
    Optional<Mark> continuous = row.find(Meaning.CONTINUOUS);
    Optional<Mark> peak = row.find(Meaning.PEAK);
    List<String> words = new ArrayList<>();
    continuous.ifPresent(m -> words.add(value(row, m, "")));
    peak.ifPresent(m -> words.add(value(row, m, "peak ")));
    words.remove("");
    words.remove("");
    return words.isEmpty() ? "" : "rated " + String.join(", ", words);
  }

  private static String value(Row row, Mark mark, String before) {
    return mark.amount() instanceof Amount.Known known
        ? before + Numbers.text(known, Rows.known(row))
        : mark.amount().isAbsent() ? "" : before + "? A";
  }

  private void bar(Row row, Meaning meaning, Scale scale, boolean dashed) {
    row.known(meaning)
        .ifPresent(
            known -> {
              canvas
                  .svg()
                  .leaf(
                      "rect",
                      Canvas.data(
                          row,
                          row.find(meaning).orElseThrow(),
                          known,
                          Canvas.bar(
                              scale.from(),
                              scale.at(known.value()),
                              canvas.y(),
                              BAR,
                              dashed,
                              "class",
                              "plot-bound")));
              canvas.range(scale, known, canvas.y() + BAR - 3);
            });
  }

  private List<Canvas.Entry> key() {
    List<Canvas.Entry> entries = new ArrayList<>();
    for (Meaning meaning : FLOWS) {
      if (plot.rows().stream().anyMatch(r -> r.known(meaning).isPresent())) {
        entries.add(Canvas.Entry.of(meaning));
      }
    }
    entries.add(Canvas.Entry.of("bar", Meaning.CONTINUOUS.words()));
    if (plot.rows().stream().anyMatch(r -> r.known(Meaning.PEAK).isPresent())) {
      entries.add(Canvas.Entry.of("dashed bar", Meaning.PEAK.words()));
    }
    if (plot.rows().stream().flatMap(r -> Rows.known(r).stream()).anyMatch(Numbers::hasRange)) {
      entries.add(Canvas.Entry.of("range", "range left by what is assumed"));
    }
    return entries;
  }

  /** What a row says, in a sentence. */
  static String sentence(Row row) {
    List<String> words = new ArrayList<>();
    for (Mark mark : row.marks()) {
      if (mark.isKnown()) {
        words.add(mark.meaning().words() + " " + AmountText.text(mark.amount().get()));
      }
    }
    return Texts.apart(row.name())
        + ": "
        + (words.isEmpty() ? "cannot tell" : String.join(", ", words))
        + ".";
  }
}
