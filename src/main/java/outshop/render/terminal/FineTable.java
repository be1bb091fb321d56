package outshop.render.terminal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import outshop.findings.Finding;
import outshop.input.Shown;
import outshop.units.AmountText;

/** What is fine, a line each: the rule, where, and how much room is left. */
final class FineTable {
  private static final int MOST_NAME = 24;
  private static final int PERCENT = 8;

  private final Sheet sheet;
  private final TerminalReport.Depth depth;
  private int hidden;

  FineTable(Sheet sheet, TerminalReport.Depth depth) {
    this.sheet = sheet;
    this.depth = depth;
  }

  /** How many were counted but not shown. */
  int hidden() {
    return hidden;
  }

  /** What compares numbers first, tightest first, then what has no number to it. */
  void print(List<Finding> fine) {
    List<Finding> rows = new ArrayList<>();
    Map<String, Integer> left = new HashMap<>();
    for (boolean compared : new boolean[] {true, false}) {
      for (Finding finding : fine) {
        if (finding.demand().isPresent() == compared) {
          int nth = left.merge(finding.rule(), 1, Integer::sum);
          if (depth.all() || nth <= TerminalReport.SHOWN_OF_ONE_RULE) {
            rows.add(finding);
          }
        }
      }
    }
    int rule = 0;
    int name = 0;
    for (Finding finding : rows) {
      rule = Math.max(rule, finding.rule().length());
      name = Math.max(name, Glyphs.columns(name(finding)));
    }
    for (Finding finding : rows) {
      row(finding, rule, Math.min(name, MOST_NAME));
    }
    for (Map.Entry<String, Integer> entry : new TreeMap<>(left).entrySet()) {
      int more = entry.getValue() - TerminalReport.SHOWN_OF_ONE_RULE;
      if (!depth.all() && more > 0) {
        hidden += more;
        sheet.paragraph(2, "and " + more + " more of " + entry.getKey() + " (--all)");
      }
    }
  }

  private void row(Finding finding, int rule, int name) {
    StringBuilder first = new StringBuilder("  ").append(finding.rule());
    pad(first, rule + 4 - first.length());
    String at = name(finding);
    first.append(at);
    pad(first, name - Glyphs.columns(at) + 2);
    sheet.row(first.toString(), room(finding));
    if (depth.working()) {
      sheet.paragraph(6, finding.headline());
      for (Finding.Step step : finding.working()) {
        sheet.paragraph(8, step.what() + " = " + step.value() + " [" + step.how() + "]");
      }
    }
  }

  private static String room(Finding finding) {
    if (finding.demand().isEmpty()) {
      return "as it must be";
    }
    if (finding.past() == 0) {
      return "at the bound";
    }
    String percent = AmountText.percent(-finding.past());
    return " ".repeat(Math.max(0, PERCENT - percent.length())) + percent;
  }

  private static String name(Finding finding) {
    return Shown.text(finding.at().name());
  }

  private static void pad(StringBuilder text, int spaces) {
    text.append(" ".repeat(Math.max(0, spaces)));
  }
}
