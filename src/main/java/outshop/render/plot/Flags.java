package outshop.render.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Letters in little boxes above a drawing, each tied to its place, none over another. */
final class Flags {
  static final double HEIGHT = 26;
  private static final double BOX = 15;

  private Flags() {}

  /** A letter and where it belongs. */
  record Flag(String letter, double x) {}

  /** The letter of the n-th flag, from 0. */
  static String letter(int index) {
    return index < 26 ? String.valueOf((char) ('A' + index)) : "A" + letter(index - 26);
  }

  /** Draws them from the canvas's height downwards, {@link #HEIGHT} high. */
  static void draw(Canvas canvas, List<Flag> flags, double left, double right) {
    List<Flag> sorted = flags.stream().sorted(Comparator.comparingDouble(Flag::x)).toList();
    List<Double> places =
        spread(sorted.stream().map(Flag::x).toList(), BOX + 1, left + BOX / 2, right - BOX / 2);
    for (int i = 0; i < sorted.size(); i++) {
      double x = places.get(i);
      double y = canvas.y();
      canvas.line(x, y + BOX, sorted.get(i).x(), y + HEIGHT, "none", 1);
      canvas
          .svg()
          .leaf(
              "rect",
              "x",
              x - BOX / 2,
              "y",
              y,
              "width",
              BOX,
              "height",
              BOX,
              "rx",
              "2",
              "fill",
              Look.PAPER,
              "stroke",
              Look.INK);
      canvas.text(sorted.get(i).letter(), x, y + BOX - 3.5, "middle", Canvas.SMALL, 40);
    }
  }

  /** Places at least {@code apart} from each other, as near as may be to the given rising ones. */
  static List<Double> spread(List<Double> wanted, double apart, double left, double right) {
    double[] places = new double[wanted.size()];
    double least = left;
    for (int i = 0; i < places.length; i++) {
      places[i] = Math.max(least, wanted.get(i));
      least = places[i] + apart;
    }
    double most = right;
    for (int i = places.length - 1; i >= 0; i--) {
      places[i] = Math.min(most, places[i]);
      most = places[i] - apart;
    }
    List<Double> spread = new ArrayList<>();
    for (double place : places) {
      spread.add(place);
    }
    return spread;
  }
}
