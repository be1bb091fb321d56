package outshop.render.plot;

import outshop.input.Shown;

/** Makes texts fit to be drawn: visible, escaped, and no wider than their room. */
final class Texts {
  /** No text of a plot is longer than this; a longer one is cut. */
  static final int LONGEST = 400;

  private static final String CUT = "…";

  private Texts() {}

  /**
   * The text with control and direction characters, and what XML does not allow, written as {@code
   * \\u....}, cut after {@link #LONGEST} characters.
   */
  static String visible(String raw) {
    StringBuilder visible = new StringBuilder();
    int used = 0;
    for (int i = 0; i < raw.length(); ) {
      int c = raw.codePointAt(i);
      i += Character.charCount(c);
      if (used++ == LONGEST) {
        return visible.append(CUT).toString();
      }
      if (Shown.isHidden(c)) {
        visible.append("\\u%04x".formatted(c));
      } else {
        visible.appendCodePoint(c);
      }
    }
    return visible.toString();
  }

  /** As {@link #visible}, and kept from turning round what stands beside it. */
  static String apart(String raw) {
    String visible = visible(raw);
    boolean plain = visible.chars().allMatch(c -> c < 0x250);
    return plain ? visible : "\u2068" + visible + "\u2069";
  }

  /** Escaped for XML, as text or between double quotes. */
  static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> escaped.append("&amp;");
        case '<' -> escaped.append("&lt;");
        case '>' -> escaped.append("&gt;");
        case '"' -> escaped.append("&quot;");
        case '\'' -> escaped.append("&#39;");
        default -> escaped.append(c);
      }
    }
    return escaped.toString();
  }

  /** About how wide a text is, rather too wide than too narrow, in units of its height. */
  static double width(String text) {
    return text.codePoints().mapToDouble(Texts::width).sum();
  }

  private static double width(int c) {
    if (c >= 0x1100) {
      return 1.05;
    }
    if (c >= 0x250) {
      return 0.75;
    }
    if ("ijl|.,:;'!I ".indexOf(c) >= 0) {
      return 0.34;
    }
    if ("tfr()[]/-".indexOf(c) >= 0) {
      return 0.42;
    }
    if ("mMW@%".indexOf(c) >= 0) {
      return 0.98;
    }
    return Character.isUpperCase(c) || c == 'w' ? 0.76 : 0.63;
  }

  /** The text, its end cut off where it is wider than its room. */
  static String fitted(String text, double room) {
    if (width(text) <= room) {
      return text;
    }
    StringBuilder kept = new StringBuilder();
    double left = room - width(CUT);
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      left -= width(c);
      if (left < 0) {
        break;
      }
      kept.appendCodePoint(c);
      i += Character.charCount(c);
    }
    return kept.toString().stripTrailing() + CUT;
  }
}
