package outshop.render.terminal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Problem;
import outshop.input.Shown;
import outshop.report.Aspect;
import outshop.report.Report;

/** The report as text: the verdict first, then what was found, worst first. */
public final class TerminalReport {
  /** Findings of one rule that are shown before the rest is only counted. */
  static final int SHOWN_OF_ONE_RULE = 3;

  private static final char HOLDS = '\u00a0';

  private final Report report;
  private final Sheet sheet;
  private final Depth depth;
  private int hidden;

  /**
   * How much is shown.
   *
   * @param working every step of the working as well
   * @param all every finding of a rule, however many there are
   */
  public record Depth(boolean working, boolean all) {}

  private TerminalReport(Report report, Look look, Depth depth) {
    this.report = report;
    this.sheet = new Sheet(look);
    this.depth = depth;
  }

  /** The whole report, every line ended by {@code \n} and no longer than the look's width. */
  public static String text(Report report, Look look, Depth depth) {
    TerminalReport printed = new TerminalReport(report, look, depth);
    printed.verdict();
    printed.findings();
    printed.cannotTell();
    printed.fine();
    printed.accepted();
    printed.notes();
    printed.cautions();
    printed.tally();
    return printed.sheet.text();
  }

  /**
   * The verdict in one line: {@code Stop: 3 violations, 2 warnings, 4 cannot tell, 1 advice, 41
   * fine; 66 rules}.
   */
  public static String summary(Report report) {
    return held(report).replace(HOLDS, ' ');
  }

  /** The summary with a space that holds between each number and what it counts. */
  private static String held(Report report) {
    String word = report.verdict().word();
    return Character.toUpperCase(word.charAt(0))
        + word.substring(1)
        + ": "
        + counts(report)
        + "; "
        + counted(report.rules(), "rule");
  }

  private static String counts(Report report) {
    return counted(report.count(Outcome.VIOLATION), "violation")
        + ", "
        + counted(report.count(Outcome.WARNING), "warning")
        + ", "
        + report.count(Outcome.CANNOT_TELL)
        + HOLDS
        + "cannot"
        + HOLDS
        + "tell, "
        + report.count(Outcome.ADVICE)
        + HOLDS
        + "advice, "
        + report.count(Outcome.FINE)
        + HOLDS
        + "fine";
  }

  static String counted(int count, String noun) {
    return count + String.valueOf(HOLDS) + noun + (count == 1 ? "" : "s");
  }

  private void verdict() {
    List<String> arm = Arm.large(report.verdict());
    Paint paint = Paint.of(report.verdict());
    List<String> texts = new ArrayList<>();
    texts.add(Shown.text(report.title()) + " (" + Shown.text(report.planFile()) + ")");
    texts.add(held(report));
    sheet.beside(arm, paint, texts);
  }

  private void findings() {
    if (report.findings().isEmpty()) {
      return;
    }
    section("Found, worst first");
    FindingBlock block = new FindingBlock(sheet, depth.working());
    Map<String, Integer> seen = new HashMap<>();
    boolean first = true;
    for (Finding finding : report.findings()) {
      int nth = seen.merge(finding.rule(), 1, Integer::sum);
      if (!depth.all() && nth > SHOWN_OF_ONE_RULE) {
        continue;
      }
      if (!first) {
        sheet.blank();
      }
      first = false;
      block.print(finding);
      if (!depth.all() && nth == SHOWN_OF_ONE_RULE) {
        more(finding.rule());
      }
    }
  }

  private void more(String rule) {
    int more = -SHOWN_OF_ONE_RULE;
    for (Finding finding : report.findings()) {
      more += finding.rule().equals(rule) ? 1 : 0;
    }
    if (more > 0) {
      hidden += more;
      sheet.blank();
      sheet.paragraph(5, "and " + more + " more of " + rule + " (--all)");
    }
  }

  private void cannotTell() {
    if (report.cannotTell().isEmpty()) {
      return;
    }
    section("Cannot tell, by the value that is wanted, the most deciding first");
    for (int i = 0; i < report.wanted().size(); i++) {
      if (i > 0) {
        sheet.blank();
      }
      wanted(report.wanted().get(i));
    }
  }

  private void wanted(Report.Wanted wanted) {
    sheet.hanging(
        Arm.small(Aspect.CAUTION) + "  ",
        Paint.of(Outcome.CANNOT_TELL),
        Shown.text(wanted.want().name()),
        Paint.BOLD);
    sheet.hanging("     get it    ", wanted.want().how());
    List<String> rules = wanted.rules();
    boolean cut = !depth.all() && rules.size() > SHOWN_OF_ONE_RULE + 1;
    String names = String.join(", ", cut ? rules.subList(0, SHOWN_OF_ONE_RULE) : rules);
    String more = cut ? " and " + (rules.size() - SHOWN_OF_ONE_RULE) + " more (--all)" : "";
    sheet.hanging("     decides   ", counted(rules.size(), "rule") + ": " + names + more);
    sheet.hanging("     at worst  ", wanted.worst().word() + ": " + wanted.worst().meaning());
  }

  private void fine() {
    if (report.fine().isEmpty()) {
      return;
    }
    section("Fine, with the room that is left");
    sheet.paragraph(2, "Room: how far the value stays from its bound, in per cent of the bound.");
    FineTable table = new FineTable(sheet, depth);
    table.print(report.fine());
    hidden += table.hidden();
  }

  private void accepted() {
    if (!report.accepted().isEmpty()) {
      section("Accepted by the owner, not counted");
      for (Report.Accepted accepted : report.accepted()) {
        Finding finding = accepted.finding();
        sheet.hanging("  ", finding.headline());
        sheet.hanging(
            "    was       ", finding.outcome().words() + ", " + finding.consequence().word());
        sheet.hanging("    reason    ", accepted.reason());
        sheet.hanging("    rule      ", finding.rule() + " at " + Shown.text(finding.at().name()));
      }
    }
    if (!report.unusedAcceptances().isEmpty()) {
      section("Acceptances without effect");
      for (String words : report.unusedAcceptances()) {
        sheet.hanging("  - ", words);
      }
    }
  }

  private void notes() {
    if (report.notes().isEmpty()) {
      return;
    }
    section("Notes on the files");
    for (Problem problem : report.notes()) {
      String unlikely = problem.severity() == Problem.Severity.UNLIKELY ? "unlikely: " : "";
      sheet.hanging("  - ", unlikely + problem.line());
    }
  }

  private void cautions() {
    if (report.cautions().isEmpty()) {
      return;
    }
    section("Mind");
    for (String caution : report.cautions()) {
      sheet.hanging("  - ", caution);
    }
  }

  private void tally() {
    StringBuilder tally = new StringBuilder("Counted: ").append(counts(report)).append('.');
    if (!report.accepted().isEmpty()) {
      tally.append(" Accepted and not counted: ").append(report.accepted().size()).append('.');
    }
    if (hidden > 0) {
      tally.append(" Counted but not shown: ").append(hidden).append(" (--all).");
    }
    tally.append(" What a rule means, in your numbers: outshop explain RULE --plan PLAN.");
    sheet.blank();
    sheet.paragraph(0, tally.toString());
  }

  private void section(String words) {
    sheet.blank();
    sheet.heading(words);
  }
}
