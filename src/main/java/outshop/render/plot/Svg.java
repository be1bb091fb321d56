package outshop.render.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;

/** Writes SVG, element by element; attribute values and texts are escaped here and only here. */
final class Svg {
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn; a number is written with two decimals at most
   */
  Svg open(String name, Object... attributes) {
    start(name, attributes).append('>');
    open.push(name);
    return this;
  }

  Svg close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Closes it and ends the line. */
  Svg closeLine() {
    close();
    out.append('\n');
    return this;
  }

  /** An element without content. */
  Svg leaf(String name, Object... attributes) {
    start(name, attributes).append("/>\n");
    return this;
  }

  Svg text(String text) {
    out.append(Texts.escaped(text));
    return this;
  }

  /** What another has written, as it stands. */
  Svg insert(Svg other) {
    out.append(other.written());
    return this;
  }

  private StringBuilder start(String name, Object... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      Object value = attributes[i + 1];
      String written = value instanceof Double d ? number(d) : value.toString();
      out.append(' ').append(attributes[i]).append("=\"").append(Texts.escaped(written));
      out.append('"');
    }
    return out;
  }

  /** A place in the drawing, to a hundredth. */
  static String number(double place) {
    String plain =
        BigDecimal.valueOf(place)
            .setScale(2, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString();
    return plain.equals("-0") ? "0" : plain;
  }

  /** What was written. Errors: {@link IllegalStateException} if an element is still open. */
  String written() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return out.toString();
  }
}
