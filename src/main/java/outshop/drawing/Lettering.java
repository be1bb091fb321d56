package outshop.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import outshop.input.Shown;

/**
 * How much room text takes. Without the fonts of whoever looks at it this is an estimate, by the
 * widest of the usual sans-serif faces (DejaVu Sans, measured in a browser).
 */
public final class Lettering {
  /** A number stays with its unit. */
  private static final Pattern BEFORE_UNIT = Pattern.compile("([0-9]) (?=\\p{L}{1,3}\\b)");

  private static final double LETTER = 0.64;
  private static final double CAPITAL = 0.79;
  private static final double SIGN = 0.84;
  private static final double BROAD = 1.0;
  private static final double SLIM = 0.42;
  private static final double FULL_WIDTH = 1.05;
  private static final double BOLD = 1.1;
  private static final int FIRST_FULL_WIDTH = 0x1100;

  private Lettering() {}

  /** The width of a text in letters of a size. */
  public static int width(String text, double size, boolean bold) {
    double ems = text.codePoints().mapToDouble(Lettering::ems).sum();
    return (int) Math.ceil(ems * size * (bold ? BOLD : 1));
  }

  private static double ems(int c) {
    if (c >= FIRST_FULL_WIDTH && !isSign(c)) {
      return FULL_WIDTH;
    }
    if ("WMm@%…".indexOf(c) >= 0) {
      return BROAD;
    }
    if ("+−=<>~#&w".indexOf(c) >= 0) {
      return SIGN;
    }
    if ("ijltfrIJ.,:;'|()[]!/- ".indexOf(c) >= 0) {
      return SLIM;
    }
    return Character.isUpperCase(c) ? CAPITAL : LETTER;
  }

  /** Dashes, dots, arrows and the like lie well above the letters' codes and are no wider. */
  private static boolean isSign(int c) {
    return c >= 0x2000 && c < 0x2E80;
  }

  /** A text of the user's in one line, cut after so many characters. */
  public static String shortened(String text, int letters) {
    return cut(Shown.text(text), letters);
  }

  private static String cut(String shown, int letters) {
    if (shown.codePointCount(0, shown.length()) <= letters) {
      return shown;
    }
    int end = shown.offsetByCodePoints(0, letters - 1);
    return shown.substring(0, end).stripTrailing() + "…";
  }

  /**
   * A text of the user's wrapped into lines; a word longer than a line and what does not fit into
   * the last line are cut.
   */
  public static List<String> lines(String text, int letters, int most) {
    String kept = BEFORE_UNIT.matcher(Shown.text(text)).replaceAll("$1\u00a0");
    return wrapped(kept, letters, most);
  }

  /** As {@link #lines}, for a text that is fit to be shown as it is. */
  public static List<String> wrapped(String text, int letters, int most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split(" +")) {
      boolean fits = line.isEmpty() || line.length() + 1 + word.length() <= letters;
      if (fits || lines.size() == most - 1) {
        line = line.isEmpty() ? word : line + " " + word;
      } else {
        lines.add(cut(line, letters));
        line = word;
      }
    }
    if (!line.isEmpty()) {
      lines.add(cut(line, letters));
    }
    return lines;
  }
}
