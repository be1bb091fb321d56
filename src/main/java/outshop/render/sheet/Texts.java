package outshop.render.sheet;

import java.util.Locale;
import outshop.sheets.Expected;
import outshop.sheets.Figure;
import outshop.units.Want;

/** What the templates print of values that are no text yet. */
public final class Texts {
  private Texts() {}

  /** The full value, in the fewest digits that give it back exactly. */
  public static String value(Figure figure) {
    return Double.toString(figure.value());
  }

  /** The unit as the JSON names it. */
  public static String unit(Figure figure) {
    return figure.unit().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What a window is wanting. */
  public static String wants(Expected.Untold untold) {
    return String.join(", ", untold.wants().stream().map(Want::name).toList());
  }

  /** What is left of the budget, or how far it is overdrawn. */
  public static String leftWords(Figure left) {
    return left.value() < 0 ? "Over the budget" : "Left of it";
  }
}
