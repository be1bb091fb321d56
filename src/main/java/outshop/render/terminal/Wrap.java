package outshop.render.terminal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/** Breaks a text into lines, never between a number and its unit unless one line cannot hold it. */
final class Wrap {
  private static final Set<String> UNITS = units();

  private Wrap() {}

  /**
   * The lines of a text; one empty line for an empty text.
   *
   * @param text cleaned
   * @param width of every line, in columns
   */
  static List<String> lines(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    for (String word : words(text)) {
      int columns = Glyphs.columns(word);
      if (used > 0 && used + 1 + columns > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (columns > width) {
        word = cutFrom(word, width, lines);
        columns = Glyphs.columns(word);
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      line.append(word);
      used += columns;
    }
    lines.add(line.toString());
    lines.replaceAll(l -> l.replace('\u00a0', ' '));
    return lines;
  }

  /** Puts full lines of a word that no line holds into {@code lines}; what is left is returned. */
  private static String cutFrom(String word, int width, List<String> lines) {
    String rest = word;
    while (Glyphs.columns(rest) > width) {
      int end = 0;
      int columns = 0;
      while (true) {
        int c = rest.codePointAt(end);
        if (columns + Glyphs.columns(c) > width) {
          break;
        }
        columns += Glyphs.columns(c);
        end += Character.charCount(c);
      }
      int space = rest.lastIndexOf('\u00a0', end);
      boolean atSpace = space > 0;
      end = atSpace ? space : Math.max(end, 1);
      lines.add(rest.substring(0, end));
      rest = rest.substring(atSpace ? end + 1 : end);
    }
    return rest;
  }

  /** The words between spaces, a number joined to the unit after it by a space that holds. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    int at = 0;
    while (at < text.length()) {
      int space = text.indexOf(' ', at);
      int end = space < 0 ? text.length() : space;
      if (end > at) {
        String word = text.substring(at, end);
        String before = words.isEmpty() ? "" : words.get(words.size() - 1);
        if (holds(before, word)) {
          words.set(words.size() - 1, before + '\u00a0' + word);
        } else {
          words.add(word);
        }
      }
      at = end + 1;
    }
    return words;
  }

  private static boolean holds(String before, String word) {
    if (before.isEmpty()) {
      return false;
    }
    char first = word.charAt(0);
    if (before.equals("+/-") || before.equals("±")) {
      return isDigit(first);
    }
    return isDigit(before.charAt(before.length() - 1)) && UNITS.contains(bare(word));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /** The word without the marks that may stand behind it. */
  private static String bare(String word) {
    int end = word.length();
    while (end > 0 && ",;:.)?!'\"".indexOf(word.charAt(end - 1)) >= 0) {
      end--;
    }
    return word.substring(0, end);
  }

  private static Set<String> units() {
    Set<String> units = new HashSet<>();
    for (Unit unit : Unit.values()) {
      units.add(unit.symbol());
      units.addAll(QuantityReader.spellings(unit));
    }
    units.remove("");
    return units;
  }
}
