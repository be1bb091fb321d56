package outshop.catalogue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import outshop.input.Nearest;

/** Cells that hold texts and words. */
final class CellText {
  static final int LONGEST = 2000;
  static final String OR_BLANK = ", or a blank cell if it is not known";

  private static final int LONGEST_WORD = 60;
  private static final Set<String> ERRORS =
      Set.of(
          "#REF!", "#N/A", "#NAME?", "#VALUE!", "#DIV/0!", "#NUM!", "#NULL!", "#SPILL!", "#CALC!");

  private CellText() {}

  /** Whether a spreadsheet wrote this because it could not work out a formula. */
  static boolean isSpreadsheetError(String text) {
    return (text.charAt(0) == '#' && ERRORS.contains(text)) || text.startsWith("Err:5");
  }

  /**
   * The text without one leading apostrophe, which is put before a text that a spreadsheet would
   * take for a formula.
   */
  static String withoutApostrophe(String text) {
    return text.startsWith("'") ? Blanks.trimmed(text.substring(1)) : text;
  }

  /** A text in one line, without a leading apostrophe. */
  static Cell text(String text) {
    String bare = withoutApostrophe(text);
    if (bare.isEmpty()) {
      return new Cell.Blank();
    }
    for (int i = 0; i < bare.length(); i++) {
      char c = bare.charAt(i);
      if (Character.isISOControl(c) && !Blanks.isBlank(c)) {
        return new Cell.Wrong(text, "a control character in a text", "printable characters only");
      }
    }
    return new Cell.Words(Blanks.inOneLine(bare));
  }

  static Cell word(Column column, String text) {
    for (String word : column.words()) {
      if (word.equalsIgnoreCase(text)) {
        return new Cell.Words(word);
      }
    }
    return new Cell.Wrong(
        text,
        "not a word of this column" + Nearest.hint(text, column.words()),
        oneOf(column.words()) + OR_BLANK);
  }

  static Cell words(Column column, String text) {
    List<String> allowed = column.words();
    boolean any = allowed.contains("*");
    Set<String> found = new LinkedHashSet<>();
    for (String part : Blanks.split(text)) {
      String low = part.toLowerCase(Locale.ROOT);
      if (any && !isFreeWord(low)) {
        return new Cell.Wrong(
            part,
            "not a word",
            "words of letters, digits and hyphens, with spaces between" + OR_BLANK);
      }
      if (!any && !allowed.contains(low)) {
        return new Cell.Wrong(
            part,
            "not a word of this column" + Nearest.hint(part, allowed),
            "one or more of " + listed(allowed) + ", with spaces between" + OR_BLANK);
      }
      found.add(low);
    }
    if (found.size() > 1 && found.contains("none")) {
      return new Cell.Wrong(text, "none beside other words", "none alone, or the other words");
    }
    return new Cell.Words(String.join(" ", found));
  }

  /** Whether a text is an id or a word of the user's own: lower-case letters, digits, hyphens. */
  static boolean isFreeWord(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || (c == '-' && i > 0);
      if (!plain) {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= LONGEST_WORD;
  }

  static String oneOf(List<String> words) {
    return words.size() == 2 ? words.get(0) + " or " + words.get(1) : "one of " + listed(words);
  }

  private static String listed(List<String> words) {
    return String.join(", ", words);
  }
}
