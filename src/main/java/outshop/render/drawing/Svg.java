package outshop.render.drawing;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes SVG element by element. Whatever is put in as text or attribute is escaped. */
final class Svg {
  private static final String REPLACEMENT = "\uFFFD";

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes name, value, name, value, ...; one with an empty value is left out
   */
  Svg open(String name, Object... attributes) {
    tag(name, attributes);
    out.append(">\n");
    open.push(name);
    return this;
  }

  Svg close() {
    out.append("</").append(open.pop()).append(">\n");
    return this;
  }

  /** An element that holds nothing. */
  Svg empty(String name, Object... attributes) {
    tag(name, attributes);
    out.append("/>\n");
    return this;
  }

  /** An element that holds a text. */
  Svg text(String name, String text, Object... attributes) {
    tag(name, attributes);
    out.append('>').append(escaped(text)).append("</").append(name).append(">\n");
    return this;
  }

  /** What stands in the program itself and is no text of the user's. */
  Svg style(String css) {
    out.append("<style>\n").append(css).append("</style>\n");
    return this;
  }

  /** All elements of another. */
  Svg append(Svg other) {
    out.append(other.out);
    return this;
  }

  private void tag(String name, Object... attributes) {
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      String value = attributes[i + 1].toString();
      if (!value.isEmpty()) {
        out.append(' ').append(attributes[i]).append("=\"").append(escaped(value)).append('"');
      }
    }
  }

  @Override
  public String toString() {
    return out.toString();
  }

  /**
   * A text as XML 1.0 may hold it; what it may not hold at all becomes the replacement sign, and
   * marks that turn the direction of writing are written out.
   */
  static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> {
                  if (Character.getType(c) == Character.FORMAT) {
                    escaped.append("\\u%04x".formatted(c));
                  } else if (isXml(c)) {
                    escaped.appendCodePoint(c);
                  } else {
                    escaped.append(REPLACEMENT);
                  }
                }
              }
            });
    return escaped.toString();
  }

  /** XML 1.0 (fifth edition), production 2, without the control characters that it discourages. */
  private static boolean isXml(int c) {
    return c == '\n'
        || (c >= 0x20 && c < 0x7F)
        || (c >= 0xA0 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
