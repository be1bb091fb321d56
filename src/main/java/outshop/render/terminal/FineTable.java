package outshop.render.terminal;

import java.util.ArrayList;
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
    Map<String, Integer> ofRule = new TreeMap<>();
    rows(shown(fine, true, ofRule));
    List<Finding> met = shown(fine, false, ofRule);
    if (!met.isEmpty()) {
      sheet.paragraph(2, "As it must be, without a number to it:");
      rows(met);
    }
    ofRule.forEach(this::more);
  }

  private List<Finding> shown(List<Finding> fine, boolean compared, Map<String, Integer> ofRule) {
    List<Finding> rows = new ArrayList<>();
    for (Finding finding : fine) {
      if (finding.demand().isPresent() == compared) {
        int nth = ofRule.merge(finding.rule(), 1, Integer::sum);
        if (depth.all() || nth <= TerminalReport.SHOWN_OF_ONE_RULE) {
          rows.add(finding);
        }
      }
    }
    return rows;
  }

  private void more(String rule, int found) {
    int more = found - TerminalReport.SHOWN_OF_ONE_RULE;
    if (!depth.all() && more > 0) {
      hidden += more;
      sheet.paragraph(2, "and " + more + " more of " + rule + " (--all)");
    }
  }

  private void rows(List<Finding> rows) {
    int rule = 0;
    int name = 0;
    for (Finding finding : rows) {
      rule = Math.max(rule, finding.rule().length());
      name = Math.max(name, Glyphs.columns(name(finding)));
    }
    for (Finding finding : rows) {
      row(finding, rule, Math.min(name, MOST_NAME));
    }
  }

  /** A name wider than its column begins further left, where the rule's name leaves room. */
  private void row(Finding finding, int rule, int name) {
    StringBuilder first = new StringBuilder("  ").append(finding.rule());
    String at = name(finding);
    int over = Math.max(0, Glyphs.columns(at) - name);
    pad(first, Math.max(2, rule + 4 - first.length() - over));
    first.append(at);
    pad(first, Math.max(2, name - Glyphs.columns(at) + 2));
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
      return "";
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
