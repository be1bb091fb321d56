package outshop.render.drawing;

import java.util.ArrayList;
import java.util.List;
import outshop.drawing.WireList;
import outshop.input.Shown;

/** The wire list as plain text in columns. */
public final class WireTable {
  private static final String GAP = "  ";

  private WireTable() {}

  /** One line a wire under a line of headings; the remarks of a wire stand under it. */
  public static String text(WireList wires) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(List.of("no.", "from", "to", "gauge", "length", "colour"));
    for (WireList.Row row : wires.rows()) {
      lines.add(
          List.of(
              Integer.toString(row.number()),
              Shown.text(row.from()),
              Shown.text(row.to()),
              row.gaugeWords(),
              row.lengthWords(),
              row.colourWords()));
    }
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      line(text, lines.get(i), lines);
      for (String remark : i == 0 ? List.<String>of() : wires.rows().get(i - 1).remarks()) {
        text.append(" ".repeat(width(lines, 0))).append(GAP).append("- ");
        text.append(Shown.text(remark)).append('\n');
      }
    }
    return text.toString();
  }

  private static void line(StringBuilder text, List<String> cells, List<List<String>> all) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      line.append(cell).append(" ".repeat(width(all, i) - cell.length())).append(GAP);
    }
    text.append(line.toString().stripTrailing()).append('\n');
  }

  private static int width(List<List<String>> lines, int column) {
    return lines.stream().mapToInt(line -> line.get(column).length()).max().orElse(0);
  }
}
