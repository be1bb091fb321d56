package outshop.render.page;

import java.util.Locale;
import outshop.input.Shown;

/**
 * Makes a text of the user's fit to stand in a page: what a person would not see, or would see
 * turned round, is written as {@code \\u....}. Angle brackets and quotes need nothing here: the
 * templates escape what they print.
 */
public final class Visible {
  private static final int LONG = 400;

  private Visible() {}

  /** The whole text, however long. */
  public static String whole(String raw) {
    StringBuilder visible = new StringBuilder(raw.length());
    for (int i = 0; i < raw.length(); ) {
      int c = raw.codePointAt(i);
      i += Character.charCount(c);
      if (c == '\n' || c == '\r' || c == '\t') {
        visible.append(' ');
      } else if (Shown.isHidden(c)) {
        visible.append(String.format(Locale.ROOT, "\\u%04x", c));
      } else {
        visible.appendCodePoint(c);
      }
    }
    return visible.toString();
  }

  /** The text, cut after {@value #LONG} characters with a remark that says how many there are. */
  public static String held(String raw) {
    int length = raw.codePointCount(0, raw.length());
    if (length <= LONG) {
      return whole(raw);
    }
    return whole(raw.substring(0, raw.offsetByCodePoints(0, LONG)))
        + "... ("
        + length
        + " characters)";
  }

  /** In one line, cut after 80 characters with a remark that says how many there are. */
  public static String brief(String raw) {
    return whole(Shown.text(raw));
  }
}
