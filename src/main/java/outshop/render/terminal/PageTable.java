package outshop.render.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table of a page in columns: as wide as their words where that fits, else each cell wrapped in
 * its column. A cell is never cut.
 */
final class PageTable {
  private static final String INDENT = "  ";
  private static final int GAP = 2;

  /** A narrower column cannot be read. */
  private static final int NARROWEST = 8;

  private final List<List<String>> rows = new ArrayList<>();

  /** Takes one line of the table; the line of dashes under the head is left out. */
  void add(String line) {
    String inner = line.strip().replaceFirst("^\\|", "").replaceFirst("\\|$", "");
    List<String> cells = Arrays.stream(inner.split("\\|", -1)).map(String::strip).toList();
    if (!cells.stream().allMatch(c -> c.matches(":?-+:?"))) {
      rows.add(cells);
    }
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  void print(Sheet sheet) {
    rows.replaceAll(row -> row.stream().map(sheet::cleaned).toList());
    int[] widths = widths(sheet.width() - INDENT.length());
    boolean wrapped = false;
    for (List<String> row : rows) {
      wrapped |= height(row, widths) > 1;
    }
    for (int i = 0; i < rows.size(); i++) {
      if (wrapped && i > 1) {
        sheet.blank();
      }
      row(rows.get(i), widths, sheet);
      if (i == 0) {
        sheet.verbatim(
            0, INDENT + "-".repeat(Arrays.stream(widths).sum() + GAP * (widths.length - 1)));
      }
    }
  }

  private static int height(List<String> row, int[] widths) {
    int height = 0;
    for (int c = 0; c < row.size(); c++) {
      height = Math.max(height, Wrap.lines(row.get(c), widths[c]).size());
    }
    return height;
  }

  private void row(List<String> row, int[] widths, Sheet sheet) {
    List<List<String>> cells = new ArrayList<>();
    for (int c = 0; c < row.size(); c++) {
      cells.add(Wrap.lines(row.get(c), widths[c]));
    }
    for (int line = 0; line < height(row, widths); line++) {
      StringBuilder text = new StringBuilder(INDENT);
      for (int c = 0; c < cells.size(); c++) {
        String piece = line < cells.get(c).size() ? cells.get(c).get(line) : "";
        text.append(piece).append(" ".repeat(widths[c] - Glyphs.columns(piece) + GAP));
      }
      sheet.verbatim(0, text.toString().stripTrailing());
    }
  }

  /** What fits gets what it asks for; what asks for more shares what is left. */
  private int[] widths(int room) {
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] asked = new int[columns];
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        asked[c] = Math.max(asked[c], Glyphs.columns(row.get(c)));
      }
    }
    int left = room - GAP * (columns - 1);
    int open = columns;
    int[] widths = new int[columns];
    boolean settled = true;
    while (settled && open > 0) {
      settled = false;
      int share = left / open;
      for (int c = 0; c < columns; c++) {
        if (widths[c] == 0 && asked[c] <= share) {
          widths[c] = Math.max(1, asked[c]);
          left -= widths[c];
          open--;
          settled = true;
        }
      }
    }
    for (int c = 0; c < columns; c++) {
      if (widths[c] == 0) {
        widths[c] = Math.max(NARROWEST, left / open);
      }
    }
    return widths;
  }
}
