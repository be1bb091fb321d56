package outshop.render.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;
import outshop.units.AmountText;

/** Hours over mean amps, both logarithmic, so that one charge is a straight line or band. */
final class RunTimeDrawing {
  private static final double HEIGHT = 190;
  private static final Pen WISH = Pen.sign(Look.INK, "1.6", "6 3");

  private final Canvas canvas;
  private final Plot plot;
  private final Area area;

  private RunTimeDrawing(Canvas canvas, Plot plot) {
    this.canvas = canvas;
    this.plot = plot;
    this.area = Area.below(canvas, HEIGHT);
  }

  static void draw(Canvas canvas, Plot plot) {
    new RunTimeDrawing(canvas, plot).all();
  }

  private Optional<Amount.Known> value(Meaning meaning) {
    return plot.rows().stream().flatMap(r -> r.known(meaning).stream()).findFirst();
  }

  private void all() {
    Optional<Amount.Known> charge = value(Meaning.CHARGE);
    if (charge.isEmpty()) {
      canvas.note("Cannot tell how long one charge lasts.");
      Rows.notes(canvas, plot);
      return;
    }
    Scale x = amps(charge.get());
    Scale y = hours(charge.get(), x);
    axes(x, y);
    band(charge.get(), x, y);
    wish(x, y);
    List<String> words = points(x, y);
    area.end("mean amps from the pack");
    key(charge.get());
    words.forEach(canvas::note);
    Rows.notes(canvas, plot);
  }

  private List<Amount.Known> currents() {
    List<Amount.Known> all = new ArrayList<>();
    for (Row row : plot.rows()) {
      for (Mark mark : row.marks()) {
        mark.along().filter(a -> mark.isKnown()).ifPresent(a -> all.add(a.get()));
        if (mark.meaning() == Meaning.ALLOWED && mark.isKnown()) {
          all.add(mark.amount().get());
        }
      }
    }
    return all.stream().filter(k -> k.low() > 0 && Double.isFinite(k.high())).toList();
  }

  private Scale amps(Amount.Known charge) {
    double low = currents().stream().mapToDouble(Amount.Known::low).min().orElse(charge.low() / 20);
    double high =
        currents().stream().mapToDouble(Amount.Known::high).max().orElse(charge.high() * 4);
    return Scale.logarithmic(low / 1.3, high * 1.3, Area.LEFT, Area.RIGHT);
  }

  private Scale hours(Amount.Known charge, Scale x) {
    double low = charge.low() / x.high();
    double high = charge.high() / x.low();
    Optional<Amount.Known> asked = value(Meaning.ASKED).filter(a -> a.value() > 0);
    low = Math.min(low, asked.map(Amount.Known::value).orElse(low) / 1.2);
    high = Math.max(high, asked.map(Amount.Known::value).orElse(high) * 1.2);
    for (Row row : plot.rows()) {
      low = Math.min(low, row.known(Meaning.COLD_HOURS).map(k -> k.value() / 1.1).orElse(low));
    }
    return Scale.logarithmic(low, high, area.bottom(), area.top());
  }

  private void axes(Scale x, Scale y) {
    area.uprights(x);
    canvas.axis("y", y);
    for (double tick : Ticks.logarithmic(y.low(), y.high())) {
      area.level(y.at(tick), AmountText.number(tick) + " h");
    }
  }

  private void band(Amount.Known charge, Scale x, Scale y) {
    if (Numbers.hasRange(charge)) {
      canvas.pattern("band", 6, "M3 0V6");
      canvas
          .svg()
          .leaf(
              "path",
              "class",
              "plot-band",
              "d",
              "M%s %sL%s %sL%s %sL%s %sZ"
                  .formatted(
                      Svg.number(x.from()), Svg.number(y.at(charge.high() / x.low())),
                      Svg.number(x.to()), Svg.number(y.at(charge.high() / x.high())),
                      Svg.number(x.to()), Svg.number(y.at(charge.low() / x.high())),
                      Svg.number(x.from()), Svg.number(y.at(charge.low() / x.low()))),
              "fill",
              canvas.hatched("band"),
              "stroke",
              Look.MAY,
              "stroke-dasharray",
              "2 2",
              "data-low",
              Double.toString(charge.low()),
              "data-high",
              Double.toString(charge.high()));
    }
    canvas
        .svg()
        .leaf(
            "path",
            "class",
            "plot-charge",
            "d",
            "M%s %sL%s %s"
                .formatted(
                    Svg.number(x.from()), Svg.number(y.at(charge.value() / x.low())),
                    Svg.number(x.to()), Svg.number(y.at(charge.value() / x.high()))),
            "stroke",
            Look.MAY,
            "stroke-width",
            "2",
            "data-meaning",
            "charge",
            "data-value",
            Double.toString(charge.value()));
  }

  private void wish(Scale x, Scale y) {
    for (Row row : plot.rows()) {
      row.known(Meaning.ASKED)
          .filter(asked -> asked.value() > 0)
          .ifPresent(
              asked -> {
                double at = y.at(asked.value());
                String path = "M0 0H" + Svg.number(Area.RIGHT - Area.LEFT);
                Mark mark = row.find(Meaning.ASKED).orElseThrow();
                canvas.stroke(row, mark, WISH, Area.LEFT, at, path);
                canvas.text(
                    "wish " + AmountText.text(asked),
                    Area.LEFT + 4,
                    at - 4,
                    "start",
                    Canvas.SMALL,
                    120);
              });
      row.known(Meaning.ALLOWED).ifPresent(allowed -> allowed(row, allowed, x, y));
    }
  }

  private void allowed(Row row, Amount.Known allowed, Scale x, Scale y) {
    double at = value(Meaning.ASKED).map(asked -> y.at(asked.value())).orElse(area.top());
    String path = "M0 0V" + Svg.number(area.bottom() - at);
    Mark mark = row.find(Meaning.ALLOWED).orElseThrow();
    canvas.stroke(row, mark, WISH, x.at(allowed.value()), at, path);
  }

  /** Draws the duties with their letters; gives what each letter stands for. */
  private List<String> points(Scale x, Scale y) {
    Flags flags = new Flags();
    for (Row row : plot.rows()) {
      for (Mark mark : row.marks()) {
        boolean point = mark.along().isPresent() && mark.isKnown();
        if (!point || mark.along().get().get().value() <= 0) {
          continue;
        }
        Amount.Known amps = mark.along().get().get();
        Amount.Known hours = mark.amount().get();
        double at = x.at(amps.value());
        canvas.line(at, area.top(), at, y.at(hours.value()), "1 3", 1);
        canvas.range(x, amps, y.at(hours.value()));
        canvas.sign(row, mark, at, y.at(hours.value()));
        String said = row.name() + ": " + AmountText.text(hours) + Numbers.range(hours);
        String alone = said + ", " + AmountText.text(amps) + Numbers.range(amps);
        flags.add(amps.value(), at, alone, said);
      }
    }
    return area.flags(flags);
  }

  private void key(Amount.Known charge) {
    List<Canvas.Entry> entries = new ArrayList<>();
    if (value(Meaning.HOURS).isPresent()) {
      entries.add(Canvas.Entry.of(Meaning.HOURS));
    }
    if (value(Meaning.COLD_HOURS).isPresent()) {
      entries.add(Canvas.Entry.of(Meaning.COLD_HOURS));
    }
    if (Numbers.hasRange(charge)) {
      entries.add(Canvas.Entry.of("band", "range left by what is assumed"));
    }
    if (value(Meaning.ALLOWED).isPresent()) {
      entries.add(
          Canvas.Entry.of(
              "dashed",
              "wish; it allows a mean of " + AmountText.text(value(Meaning.ALLOWED).get())));
    }
    canvas.key(entries);
  }
}
