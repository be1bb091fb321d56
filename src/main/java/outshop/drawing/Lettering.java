package outshop.drawing;

import java.util.ArrayList;
import java.util.List;
import outshop.input.Shown;

/**
 * How much room text takes. Without the fonts of whoever looks at it this is an estimate, on the
 * wide side of the usual sans-serif faces.
 */
public final class Lettering {
  private static final double LETTER = 0.6;
  private static final double WIDE_LETTER = 1.05;
  private static final double BOLD = 1.1;
  private static final int FIRST_WIDE = 0x1100;

  private Lettering() {}

  /** The width of a text in letters of a size. */
  public static int width(String text, double size, boolean bold) {
    double ems =
        text.codePoints().mapToDouble(c -> c >= FIRST_WIDE && !isSign(c) ? WIDE_LETTER : LETTER).sum();
    return (int) Math.ceil(ems * size * (bold ? BOLD : 1));
  }

  /** Dashes, dots, arrows and the like are no wider than letters, well above the letters' codes. */
  private static boolean isSign(int c) {
    return c >= 0x2000 && c < 0x2100;
  }

  /** A text of the user's in one line, cut after so many characters. */
  public static String shortened(String text, int letters) {
    String shown = Shown.text(text);
    if (shown.codePointCount(0, shown.length()) <= letters) {
      return shown;
    }
    int end = shown.offsetByCodePoints(0, letters - 1);
    return shown.substring(0, end).stripTrailing() + "…";
  }

  /** A text of the user's wrapped into lines; what does not fit into the last is cut. */
  public static List<String> lines(String text, int letters, int most) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : Shown.text(text).strip().split(" +")) {
      boolean fits = line.isEmpty() || line.length() + 1 + word.length() <= letters;
      if (fits || lines.size() == most - 1) {
        line = line.isEmpty() ? word : line + " " + word;
      } else {
        lines.add(shortened(line, letters));
        line = word;
      }
    }
    if (!line.isEmpty()) {
      lines.add(shortened(line, letters));
    }
    return lines;
  }
}
