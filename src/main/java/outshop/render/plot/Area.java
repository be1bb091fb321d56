package outshop.render.plot;

import java.util.List;
import outshop.units.AmountText;

/**
 * The room of a drawing with two axes, below its flags.
 *
 * @param top its upper edge; the lower one is {@code height} below
 */
record Area(Canvas canvas, double top, double height) {
  static final double LEFT = 50;
  static final double RIGHT = Canvas.RIGHT - 4;

  static Area below(Canvas canvas, double height) {
    return new Area(canvas, canvas.y() + Flags.HEIGHT, height);
  }

  double bottom() {
    return top + height;
  }

  /** An upright line with its number for each amps tick. */
  void uprights(Scale x) {
    canvas.axis("x", x);
    for (double tick : Ticks.logarithmic(x.low(), x.high())) {
      canvas.line(x.at(tick), top, x.at(tick), bottom(), "none", Look.FAINT);
      canvas.text(AmountText.number(tick), x.at(tick), bottom() + 13, "middle", Canvas.SMALL, 60);
    }
  }

  /** A level line with its words on the left. */
  void level(double at, String words) {
    canvas.line(LEFT, at, RIGHT, at, "none", Look.FAINT);
    canvas.text(words, LEFT - 4, at + 4, "end", Canvas.SMALL, LEFT);
  }

  /** The letters above; gives what each stands for. */
  List<String> flags(Flags flags) {
    return flags.draw(canvas, LEFT - 40, RIGHT + 4);
  }

  /** Moves below it, with a line that says what runs along. */
  void end(String along) {
    canvas.down(Flags.HEIGHT + height + 16);
    canvas.text(along, (LEFT + RIGHT) / 2, canvas.y() + 11, "middle", Canvas.SMALL, 300);
    canvas.down(18);
  }
}
