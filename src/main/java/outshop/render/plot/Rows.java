package outshop.render.plot;

import java.util.List;
import outshop.plots.Mark;
import outshop.plots.Plot;
import outshop.plots.Row;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Want;

/** What the drawings of rows under one another have in common. */
final class Rows {
  private static final int MOST_NAMED = 4;

  /** Of so many missing values the drawing says how to get them; the text beside it of all. */
  private static final int MOST_EXPLAINED = 3;

  private Rows() {}

  /** The known values of a row. */
  static List<Amount.Known> known(Row row) {
    return row.marks().stream().map(Mark::amount).filter(Amount::isKnown).map(Amount::get).toList();
  }

  /** The name on the left and a remark on the right, in one line. */
  static void label(Canvas canvas, Row row, String right) {
    double room = Canvas.RIGHT - Canvas.LEFT;
    double taken = right.isEmpty() ? 0 : Texts.width(right) * Canvas.SMALL + 8;
    canvas.text(
        row.name(),
        Canvas.LEFT,
        canvas.y() + 11,
        "start",
        Canvas.TEXT,
        Math.max(room * 0.3, room - taken));
    if (!right.isEmpty()) {
      canvas.text(
          right, Canvas.RIGHT, canvas.y() + 11, "end", Canvas.SMALL, Math.min(taken, room * 0.7));
    }
    canvas.down(16);
  }

  /**
   * An axis of values with its lines from {@code top} to {@code bottom}, numbers above and below.
   */
  static void verticals(
      Canvas canvas, Scale scale, List<Double> ticks, String unit, double top, double bottom) {
    canvas.axis("x", scale);
    for (int i = 0; i < ticks.size(); i++) {
      double tick = ticks.get(i);
      double x = scale.at(tick);
      canvas.line(x, top, x, bottom, "none", Look.FAINT);
      boolean last = i == ticks.size() - 1;
      String words = AmountText.number(tick) + (last ? " " + unit : "");
      double half = Texts.width(words) * Canvas.SMALL / 2;
      double at = Math.min(x, Canvas.RIGHT - half);
      canvas.text(words, at, top - 4, "middle", Canvas.SMALL, 80);
      canvas.text(words, at, bottom + 12, "middle", Canvas.SMALL, 80);
    }
  }

  /** The remarks, what is assumed and what is missing, under a drawing. */
  static void notes(Canvas canvas, Plot plot) {
    plot.remarks().forEach(canvas::note);
    List<Amount.Known> assumed = plot.assumptions();
    if (!assumed.isEmpty()) {
      canvas.note("Assumed: " + some(assumed.stream().map(Amount.Known::label).toList()) + ".");
    }
    List<Want> wants = plot.wants();
    for (Want want : wants.stream().limit(MOST_EXPLAINED).toList()) {
      canvas.note("Not drawn for want of " + want.name() + ". To get it: " + want.how());
    }
    if (wants.size() > MOST_EXPLAINED) {
      List<Want> others = wants.subList(MOST_EXPLAINED, wants.size());
      canvas.note("Also wanted: " + some(others.stream().map(Want::name).toList()) + ".");
    }
  }

  private static String some(List<String> names) {
    List<String> first = names.stream().limit(MOST_NAMED).toList();
    int more = names.size() - first.size();
    return String.join("; ", first) + (more > 0 ? "; and " + more + " more" : "");
  }
}
