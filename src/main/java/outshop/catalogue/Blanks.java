package outshop.catalogue;

import java.util.ArrayList;
import java.util.List;

/**
 * What counts as blank in a cell: all that looks blank, so also the no-break spaces that web pages
 * and spreadsheets put in, and the invisible mark at the start of a file.
 */
final class Blanks {
  private Blanks() {}

  static boolean isBlank(char c) {
    if (c > ' ' && c < 0x7f) {
      return false;
    }
    return Character.isWhitespace(c)
        || Character.isSpaceChar(c)
        || c == '\ufeff'
        || c == '\u200b'
        || c == '\u0085';
  }

  static String trimmed(String text) {
    int start = 0;
    int end = text.length();
    while (start < end && isBlank(text.charAt(start))) {
      start++;
    }
    while (end > start && isBlank(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(start, end);
  }

  /** The text with each run of blanks, line breaks too, as one space. */
  static String inOneLine(String text) {
    StringBuilder line = new StringBuilder(text.length());
    boolean blankBefore = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean blank = isBlank(c);
      if (!blank) {
        line.append(c);
      } else if (!blankBefore) {
        line.append(' ');
      }
      blankBefore = blank;
    }
    return line.toString();
  }

  /** The words between blanks. */
  static List<String> split(String text) {
    List<String> words = new ArrayList<>();
    int start = -1;
    for (int i = 0; i <= text.length(); i++) {
      boolean blank = i == text.length() || isBlank(text.charAt(i));
      if (blank && start >= 0) {
        words.add(text.substring(start, i));
        start = -1;
      } else if (!blank && start < 0) {
        start = i;
      }
    }
    return words;
  }
}
