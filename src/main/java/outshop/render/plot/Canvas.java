package outshop.render.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.plots.Mark;
import outshop.plots.Meaning;
import outshop.plots.Row;
import outshop.units.Amount;

/**
 * A drawing in the making: grows downwards, as wide as a telephone, so that its texts stay legible
 * there and a wider page only enlarges it.
 */
final class Canvas {
  static final double WIDTH = 360;
  static final double LEFT = 8;
  static final double RIGHT = 352;
  static final double TEXT = 12;
  static final double SMALL = 11;
  private static final double LINE = 15;
  private static final int MOST_NOTE_LINES = 6;

  private final Svg svg = new Svg();
  private final String id;
  private double y = 4;

  Canvas(String id) {
    this.id = id;
  }

  Svg svg() {
    return svg;
  }

  String id() {
    return id;
  }

  double y() {
    return y;
  }

  void down(double by) {
    y += by;
  }

  /** A text in its room; the whole of it in a title if it had to be cut. */
  void text(String raw, double x, double at, String anchor, double size, double room) {
    String visible = Texts.visible(raw);
    String fitted = Texts.fitted(visible, room / size);
    svg.open(
        "text",
        "x",
        x,
        "y",
        at,
        "font-size",
        size,
        "text-anchor",
        anchor,
        "fill",
        Look.INK,
        "unicode-bidi",
        "isolate",
        "stroke",
        Look.PAPER,
        "stroke-width",
        "3",
        "stroke-linejoin",
        "round",
        "paint-order",
        "stroke");
    if (!fitted.equals(visible)) {
      svg.open("title").text(visible).close();
    }
    svg.text(fitted).closeLine();
  }

  void line(double x1, double y1, double x2, double y2, String dashes, double opacity) {
    svg.leaf(
        "line",
        "x1",
        x1,
        "y1",
        y1,
        "x2",
        x2,
        "y2",
        y2,
        "stroke",
        Look.INK,
        "stroke-width",
        "1",
        "stroke-dasharray",
        dashes,
        "stroke-opacity",
        opacity);
  }

  /** What tells a reader of the drawing, person or program, where its values stand. */
  void axis(String name, Scale scale) {
    svg.leaf(
        "g",
        "class",
        "plot-axis",
        "data-axis",
        name,
        "data-scale",
        scale.logarithmic() ? "logarithmic" : "linear",
        "data-low",
        Double.toString(scale.low()),
        "data-high",
        Double.toString(scale.high()),
        "data-from",
        scale.from(),
        "data-to",
        scale.to());
  }

  /** The attributes by which a drawn value is found again. */
  static Object[] data(Row row, Mark mark, Amount.Known value, Object... attributes) {
    List<Object> all = new ArrayList<>(List.of(attributes));
    all.addAll(
        List.of(
            "data-row", Texts.visible(row.name()),
            "data-meaning", mark.meaning().name().toLowerCase(java.util.Locale.ROOT)));
    mark.charge()
        .ifPresent(
            charge ->
                all.addAll(
                    List.of("data-charge", charge.name().toLowerCase(java.util.Locale.ROOT))));
    mark.along()
        .filter(Amount::isKnown)
        .ifPresent(
            along -> all.addAll(List.of("data-along", Double.toString(along.get().value()))));
    all.addAll(List.of("data-value", Double.toString(value.value())));
    return all.toArray();
  }

  /** The sign of a value, at its place. */
  void sign(Row row, Mark mark, double x, double at) {
    Sign sign = Sign.of(mark.meaning()).orElseThrow();
    svg.leaf(
        "path",
        data(
            row,
            mark,
            mark.amount().get(),
            "class",
            "plot-sign",
            "d",
            sign.path(),
            "transform",
            "translate(" + Svg.number(x) + " " + Svg.number(at) + ")",
            "fill",
            sign.filled() ? Look.GETS : Look.PAPER,
            "stroke",
            Look.GETS,
            "stroke-width",
            "1.6"));
  }

  /** The line of a value, by a path around its place. */
  void stroke(Row row, Mark mark, Pen pen, double x, double at, String path) {
    svg.leaf(
        "path",
        data(
            row,
            mark,
            mark.amount().get(),
            "class",
            pen.sort(),
            "d",
            path,
            "transform",
            "translate(" + Svg.number(x) + " " + Svg.number(at) + ")",
            "fill",
            "none",
            "stroke",
            pen.colour(),
            "stroke-width",
            pen.width(),
            "stroke-dasharray",
            pen.dashes()));
  }

  /** A hatching of its own, to be named by {@link #hatched}. */
  void pattern(String name, double size, String path) {
    svg.open("defs")
        .open(
            "pattern",
            "id",
            id + "-" + name,
            "width",
            size,
            "height",
            size,
            "patternUnits",
            "userSpaceOnUse")
        .leaf(
            "path", "d", path, "stroke", Look.INK, "stroke-width", "0.8", "stroke-opacity", "0.55")
        .close()
        .closeLine();
  }

  /** The fill that a hatching makes. */
  String hatched(String name) {
    return "url(#" + id + "-" + name + ")";
  }

  /** A dashed line with ends, over the range that assumptions leave open. */
  void range(Scale scale, Amount.Known known, double at) {
    if (!Numbers.hasRange(known)) {
      return;
    }
    double low = scale.at(known.low());
    double high = scale.at(known.high());
    svg.leaf(
        "path",
        "class",
        "plot-range",
        "d",
        "M%1$s %3$sV%4$sM%2$s %3$sV%4$sM%1$s %5$sH%2$s"
            .formatted(
                Svg.number(low),
                Svg.number(high),
                Svg.number(at - 3.5),
                Svg.number(at + 3.5),
                Svg.number(at)),
        "fill",
        "none",
        "stroke",
        Look.GETS,
        "stroke-dasharray",
        "2 2",
        "data-low",
        Double.toString(known.low()),
        "data-high",
        Double.toString(known.high()));
  }

  /** A sign with its words, for the key. */
  record Entry(Optional<Sign> sign, String swatch, String words) {
    static Entry of(Meaning meaning) {
      return new Entry(Sign.of(meaning), "", meaning.words());
    }

    /** Of something that is no sign: {@code bar}, {@code dashed bar}, {@code range} and so on. */
    static Entry of(String swatch, String words) {
      return new Entry(Optional.empty(), swatch, words);
    }
  }

  /** The key: as many entries in a line as fit. */
  void key(List<Entry> entries) {
    down(4);
    double x = LEFT;
    for (Entry entry : entries) {
      double wide = 26 + Texts.width(entry.words()) * SMALL;
      if (x > LEFT && x + wide > RIGHT) {
        x = LEFT;
        down(LINE);
      }
      swatch(entry, x, y + 6);
      text(entry.words(), x + 20, y + 10, "start", SMALL, RIGHT - x - 20);
      x += wide + 6;
    }
    down(LINE + 3);
  }

  private void swatch(Entry entry, double x, double at) {
    if (entry.sign().isPresent()) {
      Sign sign = entry.sign().get();
      svg.leaf(
          "path",
          "d",
          sign.path(),
          "transform",
          "translate(" + Svg.number(x + 8) + " " + Svg.number(at) + ")",
          "fill",
          sign.filled() ? Look.GETS : Look.PAPER,
          "stroke",
          Look.GETS,
          "stroke-width",
          "1.6");
      return;
    }
    switch (entry.swatch()) {
      case "range", "dashed" ->
          svg.leaf(
              "path",
              "d",
              "M%s %sh16".formatted(Svg.number(x), Svg.number(at)),
              "stroke",
              entry.swatch().equals("range") ? Look.GETS : Look.INK,
              "stroke-dasharray",
              entry.swatch().equals("range") ? "2 2" : "6 3");
      case "bar" -> bar(x, x + 16, at - 4, 8, false);
      case "dashed bar" -> bar(x, x + 16, at - 4, 8, true);
      default ->
          svg.leaf(
              "rect",
              "x",
              x,
              "y",
              at - 5,
              "width",
              "16",
              "height",
              "10",
              "fill",
              hatched(entry.swatch()),
              "stroke",
              Look.INK,
              "stroke-opacity",
              "0.5");
    }
  }

  private void bar(double from, double to, double top, double high, boolean dashed) {
    svg.leaf("rect", bar(from, to, top, high, dashed, new Object[0]));
  }

  /** The attributes of a bar that shows what may be. */
  static Object[] bar(
      double from, double to, double top, double high, boolean dashed, Object... more) {
    List<Object> all =
        new ArrayList<>(
            List.of(
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
                dashed ? "0" : Double.toString(Look.PALE),
                "stroke",
                Look.MAY,
                "stroke-width",
                "1.2",
                "stroke-dasharray",
                dashed ? "4 2" : "none"));
    all.addAll(List.of(more));
    return all.toArray();
  }

  /** Lines of small text, broken between words; a long one ends with where to read on. */
  void note(String raw) {
    List<String> lines = new ArrayList<>(List.of(""));
    for (String word : Texts.visible(raw).split(" ")) {
      String last = lines.get(lines.size() - 1);
      String longer = last.isEmpty() ? word : last + " " + word;
      if (last.isEmpty() || Texts.width(longer) * SMALL <= RIGHT - LEFT) {
        lines.set(lines.size() - 1, longer);
      } else if (lines.size() == MOST_NOTE_LINES) {
        lines.set(lines.size() - 1, last + " …");
        break;
      } else {
        lines.add(word);
      }
    }
    for (String line : lines) {
      text(line, LEFT, y + 10, "start", SMALL, RIGHT - LEFT);
      down(LINE);
    }
  }

  /** The finished drawing. */
  String finished(String title, String summary) {
    Svg whole = new Svg();
    whole.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "id",
        id,
        "class",
        "plot",
        "role",
        "img",
        "aria-labelledby",
        id + "-title " + id + "-desc",
        "viewBox",
        "0 0 " + Svg.number(WIDTH) + " " + Svg.number(Math.ceil(y + 4)),
        "direction",
        "ltr",
        "font-family",
        "system-ui, sans-serif");
    whole.open("title", "id", id + "-title").text(title).closeLine();
    whole.open("desc", "id", id + "-desc").text(summary).closeLine();
    return whole.insert(svg).close().written();
  }
}
