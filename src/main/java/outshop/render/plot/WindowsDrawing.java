package outshop.render.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import outshop.circuit.LoadCase;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;
import outshop.units.AmountText;

/** Volts: a bar for what a part takes, and a lane with signs for each state of the pack. */
final class WindowsDrawing {
  private static final double AREA_LEFT = 56;
  private static final double LANE = 20;

  /** From one sign of a lane down to the next, so that a small sag does not hide them. */
  private static final double STEP = 4;

  private static final int MOST_TICKS = 8;
  private static final List<Meaning> BOUNDS =
      List.of(Meaning.TAKES_LEAST, Meaning.TAKES_MOST, Meaning.RATED);

  private final Canvas canvas;
  private final Plot plot;

  private WindowsDrawing(Canvas canvas, Plot plot) {
    this.canvas = canvas;
    this.plot = plot;
  }

  static void draw(Canvas canvas, Plot plot) {
    new WindowsDrawing(canvas, plot).all();
  }

  private void all() {
    Scale scale = scale();
    double top = canvas.y() + 16;
    double bottom = top + plot.rows().stream().mapToDouble(WindowsDrawing::height).sum();
    List<Double> ticks = Ticks.linear(scale.low(), scale.high(), MOST_TICKS);
    Rows.verticals(canvas, scale, ticks, "V", top, bottom);
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
            .flatMapToDouble(k -> Arrays.stream(new double[] {k.low(), k.high()}))
            .filter(Double::isFinite)
            .toArray();
    double low = Arrays.stream(ends).min().orElse(0);
    double high = Arrays.stream(ends).max().orElse(20);
    double pad = Math.max(0.5, (high - low) * 0.05);
    return Scale.linear(Math.max(0, low - pad), high + pad, AREA_LEFT, Canvas.RIGHT - 4);
  }

  private static List<LoadCase.Charge> lanes(Row row) {
    return Arrays.stream(LoadCase.Charge.values())
        .filter(c -> row.marks().stream().anyMatch(m -> m.charge().filter(c::equals).isPresent()))
        .toList();
  }

  private static double height(Row row) {
    return 16 + Math.max(1, lanes(row).size()) * LANE + 8;
  }

  private void row(Row row, Scale scale) {
    double start = canvas.y();
    Rows.label(canvas, row, takes(row));
    bar(row, scale, Math.max(1, lanes(row).size()) * LANE);
    for (LoadCase.Charge charge : lanes(row)) {
      lane(row, charge, scale);
      canvas.down(LANE);
    }
    canvas.down(start + height(row) - canvas.y());
  }

  /** What it takes, in words. */
  private static String takes(Row row) {
    Optional<Mark> least = row.find(Meaning.TAKES_LEAST);
    Optional<Mark> most = row.find(Meaning.TAKES_MOST);
    Optional<Mark> rated = row.find(Meaning.RATED);
    if (rated.isPresent()) {
      return "rated " + value(row, rated.get());
    }
    if (least.isPresent() && most.isPresent()) {
      return "takes %s to %s".formatted(value(row, least.get()), value(row, most.get()));
    }
    return most.map(m -> "takes at most " + value(row, m)).orElse("");
  }

  private static String value(Row row, Mark mark) {
    return mark.amount() instanceof Amount.Known known
        ? Numbers.text(known, Rows.known(row))
        : mark.amount().isAbsent() ? "none" : "?";
  }

  /** Open at an end that is not stated. */
  private void bar(Row row, Scale scale, double high) {
    row.known(Meaning.RATED).ifPresent(rated -> ratedLine(row, scale.at(rated.value()), high));
    Optional<Amount.Known> least = row.known(Meaning.TAKES_LEAST);
    Optional<Amount.Known> most = row.known(Meaning.TAKES_MOST);
    if (least.isEmpty() && most.isEmpty()) {
      return;
    }
    double from = least.map(l -> scale.at(l.value())).orElse(scale.from());
    double to = most.map(m -> scale.at(m.value())).orElse(scale.to());
    double top = canvas.y();
    canvas
        .svg()
        .leaf(
            "rect",
            "x",
            from,
            "y",
            top,
            "width",
            Math.max(0, to - from),
            "height",
            high,
            "fill",
            Look.MAY,
            "fill-opacity",
            Look.PALE);
    least.ifPresent(l -> edge(row, Meaning.TAKES_LEAST, from, top, high));
    most.ifPresent(m -> edge(row, Meaning.TAKES_MOST, to, top, high));
  }

  private void edge(Row row, Meaning meaning, double x, double top, double high) {
    double foot = meaning == Meaning.TAKES_LEAST ? 5 : -5;
    String path = "M0 0h%1$sM0 0v%2$sh%1$s".formatted(Svg.number(foot), Svg.number(high));
    canvas.stroke(row, row.find(meaning).orElseThrow(), Pen.bound("1.8"), x, top, path);
  }

  private void ratedLine(Row row, double x, double high) {
    Mark rated = row.find(Meaning.RATED).orElseThrow();
    canvas.stroke(row, rated, Pen.bound("3"), x, canvas.y(), "M0 0v" + Svg.number(high));
  }

  private void lane(Row row, LoadCase.Charge charge, Scale scale) {
    double at = canvas.y() + LANE / 2;
    String word = charge.name().toLowerCase(Locale.ROOT);
    canvas.text(word, AREA_LEFT - 6, at + 4, "end", Canvas.SMALL, AREA_LEFT - 6);
    List<Mark> marks =
        row.marks().stream().filter(m -> m.charge().filter(charge::equals).isPresent()).toList();
    List<Mark> drawn = marks.stream().filter(Mark::isKnown).toList();
    if (drawn.isEmpty()) {
      canvas.text("cannot tell" + wanted(marks), AREA_LEFT + 4, at + 4, "start", Canvas.SMALL, 280);
      return;
    }
    StringBuilder sag = new StringBuilder();
    for (Mark mark : drawn) {
      double x = scale.at(mark.amount().get().value());
      sag.append(sag.length() == 0 ? "M" : "L").append(Svg.number(x)).append(' ');
      sag.append(Svg.number(at + offset(mark)));
    }
    if (drawn.size() > 1) {
      canvas.svg().leaf("path", "class", "plot-sag", "d", sag, "fill", "none", "stroke", Look.GETS);
    }
    for (Mark mark : drawn) {
      canvas.range(scale, mark.amount().get(), at + offset(mark));
    }
    for (Mark mark : drawn) {
      canvas.sign(row, mark, scale.at(mark.amount().get().value()), at + offset(mark));
    }
  }

  /** The more is drawn, the lower the sign. */
  private static double offset(Mark mark) {
    return switch (mark.meaning()) {
      case NO_LOAD, STANDING -> -1.5 * STEP;
      case CRUISING -> -0.5 * STEP;
      case SLIPPING -> 0.5 * STEP;
      case BLOCKED -> 1.5 * STEP;
      default -> 0;
    };
  }

  private static String wanted(List<Mark> marks) {
    return marks.stream()
        .map(Mark::amount)
        .filter(Amount::isMissing)
        .map(a -> ": wants " + ((Amount.Missing) a).wants().get(0).name())
        .findFirst()
        .orElse("");
  }

  private List<Canvas.Entry> key() {
    List<Canvas.Entry> entries = new ArrayList<>();
    Set<Meaning> meanings = new LinkedHashSet<>();
    plot.rows()
        .forEach(
            r -> r.marks().stream().filter(Mark::isKnown).forEach(m -> meanings.add(m.meaning())));
    if (meanings.contains(Meaning.TAKES_LEAST) || meanings.contains(Meaning.TAKES_MOST)) {
      entries.add(Canvas.Entry.of("bar", "takes"));
    }
    boolean both = meanings.contains(Meaning.NO_LOAD) && meanings.remove(Meaning.STANDING);
    for (Meaning meaning : meanings) {
      if (both && meaning == Meaning.NO_LOAD) {
        entries.add(new Canvas.Entry(Sign.of(meaning), "", "no load, or standing"));
      } else if (!BOUNDS.contains(meaning)) {
        entries.add(Canvas.Entry.of(meaning));
      }
    }
    if (plot.rows().stream().flatMap(r -> Rows.known(r).stream()).anyMatch(Numbers::hasRange)) {
      entries.add(Canvas.Entry.of("range", "range left by what is assumed"));
    }
    return entries;
  }

  /** What a row says, in a sentence. */
  static String sentence(Row row) {
    List<Mark> gets =
        row.marks().stream().filter(m -> m.charge().isPresent() && m.isKnown()).toList();
    String takes = takes(row);
    String start = Texts.apart(row.described()) + (takes.isEmpty() ? ": " : " " + takes + "; ");
    if (gets.isEmpty()) {
      return start + "what it gets cannot be told.";
    }
    Mark least = gets.get(0);
    Mark most = gets.get(0);
    for (Mark mark : gets) {
      least = mark.amount().get().value() < least.amount().get().value() ? mark : least;
      most = mark.amount().get().value() > most.amount().get().value() ? mark : most;
    }
    return start + "from %s to %s.".formatted(when(least), when(most));
  }

  private static String when(Mark mark) {
    return "%s (%s, %s)"
        .formatted(
            AmountText.text(mark.amount().get()),
            mark.meaning().words(),
            mark.charge().orElseThrow().words());
  }
}
