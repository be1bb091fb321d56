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
  private static final double AREA_LEFT = 50;
  private static final double AREA_RIGHT = Canvas.RIGHT - 4;
  private static final double HEIGHT = 190;

  private final Canvas canvas;
  private final Plot plot;
  private final double top;
  private final double bottom;

  private RunTimeDrawing(Canvas canvas, Plot plot) {
    this.canvas = canvas;
    this.plot = plot;
    this.top = canvas.y() + Flags.HEIGHT;
    this.bottom = top + HEIGHT;
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
    canvas.down(Flags.HEIGHT + HEIGHT + 16);
    canvas.text(
        "mean amps from the pack",
        (AREA_LEFT + AREA_RIGHT) / 2,
        canvas.y() + 11,
        "middle",
        Canvas.SMALL,
        300);
    canvas.down(18);
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
    return Scale.logarithmic(low / 1.3, high * 1.3, AREA_LEFT, AREA_RIGHT);
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
    return Scale.logarithmic(low, high, bottom, top);
  }

  private void axes(Scale x, Scale y) {
    canvas.axis("x", x);
    canvas.axis("y", y);
    for (double tick : Ticks.logarithmic(x.low(), x.high())) {
      canvas.line(x.at(tick), top, x.at(tick), bottom, "none", Look.FAINT);
      canvas.text(AmountText.number(tick), x.at(tick), bottom + 13, "middle", Canvas.SMALL, 60);
    }
    for (double tick : Ticks.logarithmic(y.low(), y.high())) {
      canvas.line(AREA_LEFT, y.at(tick), AREA_RIGHT, y.at(tick), "none", Look.FAINT);
      canvas.text(
          AmountText.number(tick) + " h",
          AREA_LEFT - 4,
          y.at(tick) + 4,
          "end",
          Canvas.SMALL,
          AREA_LEFT);
    }
  }

  private void band(Amount.Known charge, Scale x, Scale y) {
    if (Numbers.hasRange(charge)) {
      canvas
          .svg()
          .open("defs")
          .open(
              "pattern",
              "id",
              canvas.id() + "-band",
              "width",
              "6",
              "height",
              "6",
              "patternUnits",
              "userSpaceOnUse")
          .leaf(
              "path",
              "d",
              "M3 0V6",
              "stroke",
              Look.INK,
              "stroke-width",
              "0.8",
              "stroke-opacity",
              "0.6")
          .close()
          .closeLine();
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
              "url(#" + canvas.id() + "-band)",
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
                canvas
                    .svg()
                    .leaf(
                        "path",
                        Canvas.data(
                            row,
                            row.find(Meaning.ASKED).orElseThrow(),
                            asked,
                            "class",
                            "plot-sign",
                            "d",
                            "M0 0H" + Svg.number(AREA_RIGHT - AREA_LEFT),
                            "transform",
                            "translate(" + Svg.number(AREA_LEFT) + " " + Svg.number(at) + ")",
                            "stroke",
                            Look.INK,
                            "stroke-width",
                            "1.6",
                            "stroke-dasharray",
                            "6 3"));
                canvas.text(
                    "wish " + AmountText.text(asked),
                    AREA_LEFT + 4,
                    at - 4,
                    "start",
                    Canvas.SMALL,
                    120);
              });
      row.known(Meaning.ALLOWED).ifPresent(allowed -> allowed(row, allowed, x, y));
    }
  }

  private void allowed(Row row, Amount.Known allowed, Scale x, Scale y) {
    double at = value(Meaning.ASKED).map(asked -> y.at(asked.value())).orElse(top);
    canvas
        .svg()
        .leaf(
            "path",
            Canvas.data(
                row,
                row.find(Meaning.ALLOWED).orElseThrow(),
                allowed,
                "class",
                "plot-sign",
                "d",
                "M0 0V" + Svg.number(bottom - at),
                "transform",
                "translate(" + Svg.number(x.at(allowed.value())) + " " + Svg.number(at) + ")",
                "stroke",
                Look.INK,
                "stroke-dasharray",
                "6 3"));
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
        canvas.line(at, top, at, y.at(hours.value()), "1 3", 1);
        canvas.range(x, amps, y.at(hours.value()));
        canvas.sign(row, mark, at, y.at(hours.value()));
        String said = row.name() + ": " + AmountText.text(hours) + Numbers.range(hours);
        String alone = said + ", " + AmountText.text(amps) + Numbers.range(amps);
        flags.add(amps.value(), at, alone, said);
      }
    }
    return flags.draw(canvas, AREA_LEFT - 40, AREA_RIGHT + 4);
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
