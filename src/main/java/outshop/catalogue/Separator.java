package outshop.catalogue;

/**
 * Finds out which character parts the cells of a table: the one that makes most column names out of
 * its first line.
 */
final class Separator {
  private static final char[] POSSIBLE = {',', ';', '\t'};

  private Separator() {}

  /**
   * The length of the line {@code sep=;} with its line break, which some spreadsheets put before
   * the header, or 0 if there is none.
   */
  static int markLength(String text) {
    boolean marked =
        text.regionMatches(true, 0, "sep=", 0, 4)
            && text.length() > 4
            && (text.length() == 5 || text.charAt(5) == '\n' || text.charAt(5) == '\r');
    if (!marked) {
      return 0;
    }
    return text.startsWith("\r\n", 5) ? 7 : Math.min(6, text.length());
  }

  /** The separator of a table whose text this is, without a {@code sep=} line. */
  static char of(Kind kind, String text) {
    String header = firstLine(text);
    char best = POSSIBLE[0];
    int bestScore = -1;
    for (char separator : POSSIBLE) {
      int score = score(kind, header, separator);
      if (score > bestScore) {
        bestScore = score;
        best = separator;
      }
    }
    return best;
  }

  private static String firstLine(String text) {
    int start = 0;
    while (start < text.length() && Blanks.isBlank(text.charAt(start))) {
      start++;
    }
    int end = start;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    return text.substring(start, end);
  }

  /** Known names count before the mere number of cells. */
  private static int score(Kind kind, String header, char separator) {
    int known = 0;
    int cells = 0;
    int start = 0;
    boolean quoted = false;
    for (int i = 0; i <= header.length(); i++) {
      if (i < header.length() && header.charAt(i) == '"') {
        quoted = !quoted;
      }
      if (i == header.length() || (header.charAt(i) == separator && !quoted)) {
        cells++;
        String name = Heading.normal(header.substring(start, i).replace("\"", ""));
        if (Columns.find(kind, name).isPresent()) {
          known++;
        }
        start = i + 1;
      }
    }
    return known * 100_000 + Math.min(cells, 99_999);
  }
}
