package outshop.render.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import outshop.units.Exact;

/** Letters in little boxes above a drawing, each tied to its place, none over another. */
final class Flags {
  static final double HEIGHT = 26;
  private static final double BOX = 15;
  private static final int LETTERS = 26;

  /** A value, its place, and what is said of it. */
  private record Flag(double value, double x, List<String> said) {}

  private final List<Flag> flags = new ArrayList<>();

  /**
   * Adds what stands at a value; what stands at one and the same gets one letter.
   *
   * @param alone what to say where it is the first there
   * @param further what to say behind another
   */
  void add(double value, double x, String alone, String further) {
    for (Flag flag : flags) {
      if (Exact.same(flag.value(), value)) {
        flag.said().add(further);
        return;
      }
    }
    flags.add(new Flag(value, x, new ArrayList<>(List.of(alone))));
  }

  /**
   * Draws the letters from the canvas's height downwards, {@link #HEIGHT} high, in order from the
   * left; gives what each stands for.
   */
  List<String> draw(Canvas canvas, double left, double right) {
    flags.sort(Comparator.comparingDouble(Flag::value));
    List<Double> wanted = flags.stream().map(Flag::x).toList();
    List<Double> places = spread(wanted, BOX + 1, left + BOX / 2, right - BOX / 2);
    List<String> words = new ArrayList<>();
    for (int i = 0; i < flags.size(); i++) {
      box(canvas, letter(i), places.get(i), wanted.get(i));
      words.add(letter(i) + ": " + String.join("; ", flags.get(i).said()));
    }
    return words;
  }

  private static void box(Canvas canvas, String letter, double x, double tied) {
    double y = canvas.y();
    canvas.line(x, y + BOX, tied, y + HEIGHT, "none", 1);
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
    canvas.text(letter, x, y + BOX - 3.5, "middle", Canvas.SMALL, 40);
  }

  /** The letter of the n-th flag, from 0. */
  private static String letter(int index) {
    String letter = String.valueOf((char) ('A' + index % LETTERS));
    return index < LETTERS ? letter : letter(index / LETTERS - 1) + letter;
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
