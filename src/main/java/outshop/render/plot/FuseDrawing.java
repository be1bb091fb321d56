package outshop.render.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Unit;

/** Seconds over amps, both logarithmic: what the standard promises, and the plan's currents. */
final class FuseDrawing {
  private static final double HEIGHT = 210;
  private static final double SHORTEST_SECONDS = 0.008;

  /** A time on the axis, as people say it. */
  private record Said(double seconds, String words) {}

  private static final List<Said> TIMES =
      List.of(
          new Said(0.01, "10 ms"),
          new Said(0.1, "0.1 s"),
          new Said(1, "1 s"),
          new Said(10, "10 s"),
          new Said(60, "1 min"),
          new Said(600, "10 min"),
          new Said(3600, "1 h"),
          new Said(36_000, "10 h"),
          new Said(360_000, "100 h"));

  private final Canvas canvas;
  private final Plot plot;
  private final Area area;

  private FuseDrawing(Canvas canvas, Plot plot) {
    this.canvas = canvas;
    this.plot = plot;
    this.area = Area.below(canvas, HEIGHT);
  }

  static void draw(Canvas canvas, Plot plot) {
    new FuseDrawing(canvas, plot).all();
  }

  /** A gate with what the standard says there, as far as it does. */
  private record Gate(
      double amps, Optional<Amount.Known> shortest, Optional<Amount.Known> longest) {}

  private void all() {
    Scale x = amps();
    Scale y = seconds();
    axes(x, y);
    List<Gate> gates = gates();
    areas(gates, x, y);
    gateSigns(x, y);
    List<Canvas.Entry> key = new ArrayList<>();
    List<String> lettered = currents(x, y);
    area.end("amps through the fuse");
    if (!gates.isEmpty()) {
      key.add(Canvas.Entry.of("holds", "its standard: must still hold"));
      key.add(Canvas.Entry.of("opened", "must have opened"));
    }
    if (plot.rows().stream().anyMatch(r -> r.known(Meaning.OVERLOAD).isPresent())) {
      key.add(Canvas.Entry.of(Meaning.OVERLOAD));
    }
    if (!key.isEmpty()) {
      canvas.key(key);
    }
    lettered.forEach(canvas::note);
    Rows.notes(canvas, plot);
  }

  private Scale amps() {
    double[] all =
        plot.rows().stream()
            .flatMap(r -> r.marks().stream())
            .flatMap(m -> m.along().map(a -> Stream.of(a)).orElse(Stream.of(m.amount())))
            .filter(Amount::isKnown)
            .map(Amount::get)
            .filter(k -> k.unit() == Unit.AMPS)
            .flatMapToDouble(k -> Arrays.stream(new double[] {k.low(), k.high()}))
            .filter(a -> Double.isFinite(a) && a > 1e-6)
            .toArray();
    double low = Arrays.stream(all).min().orElse(0.1);
    double high = Arrays.stream(all).max().orElse(100);
    return Scale.logarithmic(low / 1.5, high * 1.3, Area.LEFT, Area.RIGHT);
  }

  private Scale seconds() {
    double most =
        plot.rows().stream()
            .flatMap(r -> Rows.known(r).stream())
            .filter(k -> k.unit() == Unit.SECONDS)
            .mapToDouble(Amount.Known::high)
            .filter(Double::isFinite)
            .max()
            .orElse(3600);
    return Scale.logarithmic(SHORTEST_SECONDS, Math.max(7200, most * 3), area.bottom(), area.top());
  }

  private void axes(Scale x, Scale y) {
    area.uprights(x);
    canvas.axis("y", y);
    canvas.pattern("holds", 10, "M-2 8L8 -2M2 12L12 2");
    canvas.pattern("opened", 10, "M-2 2L8 12M2 -2L12 8M-2 7L3 12M7 -2L12 3");
    for (Said time : TIMES) {
      if (time.seconds() >= y.low() && time.seconds() <= y.high()) {
        area.level(y.at(time.seconds()), time.words());
      }
    }
  }

  /** The gates with a known current, the smallest first, as the plot has them. */
  private List<Gate> gates() {
    List<Gate> gates = new ArrayList<>();
    for (Row row : plot.rows()) {
      for (Mark mark : row.marks()) {
        if (mark.meaning() == Meaning.SHORTEST
            && mark.along().filter(Amount::isKnown).isPresent()) {
          double amps = mark.along().get().get().value();
          gates.add(new Gate(amps, known(mark.amount()), longest(row, amps)));
        }
      }
    }
    return gates;
  }

  private static Optional<Amount.Known> longest(Row row, double amps) {
    return row.marks().stream()
        .filter(m -> m.meaning() == Meaning.LONGEST)
        .filter(m -> Exact.same(m.along().orElseThrow().get().value(), amps))
        .findFirst()
        .flatMap(m -> known(m.amount()));
  }

  private static Optional<Amount.Known> known(Amount amount) {
    return amount instanceof Amount.Known k ? Optional.of(k) : Optional.empty();
  }

  /** Between two gates the shorter shortest and the longer longest time, so in steps. */
  private void areas(List<Gate> gates, Scale x, Scale y) {
    if (gates.isEmpty()) {
      return;
    }
    StringBuilder holds = new StringBuilder("M" + point(Area.LEFT, area.bottom()));
    double before = Area.LEFT;
    for (Gate gate : gates) {
      if (gate.shortest().isPresent()) {
        double at = y.at(gate.shortest().get().value());
        holds
            .append('L')
            .append(point(before, at))
            .append('L')
            .append(point(x.at(gate.amps()), at));
        before = x.at(gate.amps());
      }
    }
    holds.append('L').append(point(before, area.bottom())).append('Z');
    hatch("holds", holds.toString());
    StringBuilder opened = new StringBuilder();
    double last = area.bottom();
    for (Gate gate : gates) {
      if (gate.longest().isPresent()) {
        double at = y.at(gate.longest().get().value());
        boolean first = opened.length() == 0;
        double from = x.at(gate.amps());
        opened.append(first ? "M" + point(from, area.top()) : "L" + point(from, last));
        opened.append('L').append(point(from, at));
        last = at;
      }
    }
    if (opened.length() > 0) {
      opened
          .append('L')
          .append(point(Area.RIGHT, last))
          .append('L')
          .append(point(Area.RIGHT, area.top()));
      hatch("opened", opened.append('Z').toString());
    }
  }

  private static String point(double x, double y) {
    return Svg.number(x) + " " + Svg.number(y);
  }

  private void hatch(String name, String path) {
    canvas
        .svg()
        .leaf(
            "path",
            "class",
            "plot-" + name,
            "d",
            path,
            "fill",
            canvas.hatched(name),
            "stroke",
            Look.MAY,
            "stroke-width",
            "1.2");
  }

  /** At each gate a short line for either time. */
  private void gateSigns(Scale x, Scale y) {
    for (Row row : plot.rows()) {
      for (Mark mark : row.marks()) {
        boolean gate = mark.meaning() == Meaning.SHORTEST || mark.meaning() == Meaning.LONGEST;
        if (gate && mark.isKnown() && mark.along().isPresent()) {
          Amount.Known seconds = mark.amount().get();
          double at = x.at(mark.along().get().get().value());
          Pen pen = Pen.sign(Look.INK, "2.4", "none");
          canvas.stroke(row, mark, pen, at, y.at(seconds.value()), "M-4 0H4");
        }
      }
    }
  }

  /** The lines of the currents with their letters; gives what each letter stands for. */
  private List<String> currents(Scale x, Scale y) {
    Flags flags = new Flags();
    for (Row row : plot.rows()) {
      for (Mark mark : row.marks()) {
        current(mark)
            .ifPresent(
                amps -> {
                  String lasts =
                      mark.meaning() == Meaning.OVERLOAD
                          ? " for " + AmountText.text(mark.amount().get())
                          : "";
                  String much = AmountText.text(amps) + Numbers.range(amps);
                  flags.add(
                      amps.value(),
                      x.at(amps.value()),
                      row.name() + " " + much + lasts,
                      row.name() + lasts);
                  line(row, mark, amps, x, y);
                });
      }
    }
    return area.flags(flags);
  }

  /** The current that a mark stands at; empty for a gate, or where something is missing. */
  private static Optional<Amount.Known> current(Mark mark) {
    return switch (mark.meaning()) {
      case SHORTEST, LONGEST -> Optional.empty();
      case OVERLOAD ->
          mark.isKnown() ? Optional.of(mark.along().orElseThrow().get()) : Optional.empty();
      default -> known(mark.amount());
    };
  }

  private void line(Row row, Mark mark, Amount.Known amps, Scale x, Scale y) {
    if (mark.meaning() == Meaning.OVERLOAD) {
      double at = y.at(mark.amount().get().value());
      canvas.line(x.at(amps.value()), area.top(), x.at(amps.value()), at, "1 3", 1);
      canvas.sign(row, mark, x.at(amps.value()), at);
      return;
    }
    if (Numbers.hasRange(amps) && Double.isFinite(amps.high())) {
      double from = x.at(amps.low());
      canvas
          .svg()
          .leaf(
              "rect",
              "class",
              "plot-range",
              "x",
              from,
              "y",
              area.top(),
              "width",
              x.at(amps.high()) - from,
              "height",
              HEIGHT,
              "fill",
              Look.GETS,
              "fill-opacity",
              "0.12");
    }
    String width = mark.meaning() == Meaning.RATED ? "2.4" : "1.6";
    Pen pen = Pen.sign(Look.GETS, width, dashes(mark.meaning()));
    canvas.stroke(row, mark, pen, x.at(amps.value()), area.top(), "M0 0V" + Svg.number(HEIGHT));
  }

  private static String dashes(Meaning meaning) {
    return switch (meaning) {
      case RATED -> "none";
      case SHORT_LEAST, SHORT_MOST -> "8 3 2 3";
      case BREAKING -> "12 4";
      default -> "5 3";
    };
  }
}
