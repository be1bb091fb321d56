package outshop.render.terminal;

import java.util.List;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Shown;
import outshop.report.Aspect;
import outshop.report.Basis;
import outshop.report.Lesson;
import outshop.report.Numbers;
import outshop.report.Remarks;

/** One finding in full: mark, sentence, place, numbers, reason, cure, where it comes from. */
final class FindingBlock {
  private static final String INDENT = "     ";
  private static final int LABEL = 10;

  private final Sheet sheet;
  private final boolean working;

  FindingBlock(Sheet sheet, boolean working) {
    this.sheet = sheet;
    this.working = working;
  }

  void print(Finding finding) {
    head(finding);
    numbers(finding);
    line("why", finding.why());
    list("do", finding.cures());
    remarks(finding);
    line("basis", Basis.sentence(finding.basis(), finding.source()));
    data(finding);
    line("rule", finding.rule() + " at " + Shown.text(finding.at().name()));
    if (working) {
      steps(finding);
    }
  }

  /**
   * One answer of a rule whose page is shown with it, so that basis and rule are not said again:
   * also what is fine and what cannot be told, each with every step of its working, numbered.
   */
  void print(Lesson.Answer answer) {
    Finding finding = answer.finding();
    head(finding);
    numbers(finding);
    bounds(answer.bounds());
    finding.wants().forEach(want -> line("get it", want.name() + ": " + want.how()));
    answer.accepted().ifPresent(reason -> line("accepted", "by the owner, not counted: " + reason));
    if (finding.outcome() != Outcome.FINE) {
      line("why", finding.why());
      list("do", finding.cures());
    }
    remarks(finding);
    data(finding);
    list("working", finding.working().stream().map(FindingBlock::words).toList());
  }

  private void head(Finding finding) {
    sheet.hanging(
        Arm.small(Aspect.of(finding.outcome())) + "  ",
        Paint.of(finding.outcome()),
        Remarks.outcome(finding),
        Paint.of(finding.outcome()));
    sheet.hanging(INDENT, Paint.NONE, finding.headline(), Paint.BOLD);
    line("where", finding.at().described() + ", station " + finding.at().station().words());
  }

  private void data(Finding finding) {
    if (!finding.working().isEmpty()) {
      line("data", Remarks.sureness(finding));
    }
  }

  private void numbers(Finding finding) {
    List<Numbers.Row> rows = Numbers.rows(finding);
    int widest = 0;
    for (Numbers.Row row : rows) {
      widest = Math.max(widest, Glyphs.columns(row.value()));
    }
    for (Numbers.Row row : rows) {
      String gap = " ".repeat(widest - Glyphs.columns(row.value()) + 2);
      sheet.hanging(label(row.label()) + row.value() + gap, row.note());
    }
  }

  private void remarks(Finding finding) {
    if (finding.softened()) {
      line("softened", Remarks.SOFTENED);
    }
    if (!finding.assumed().isEmpty()) {
      line("assumed", String.join("; ", finding.assumed()));
    }
  }

  private void steps(Finding finding) {
    String first = "working";
    for (Finding.Step step : finding.working()) {
      line(first, words(step));
      first = "";
    }
  }

  private static String words(Finding.Step step) {
    return step.what() + " = " + step.value() + " [" + step.how() + "]";
  }

  private void bounds(List<String> bounds) {
    for (int i = 0; i < bounds.size(); i++) {
      line(i == 0 ? "bounds" : "", bounds.get(i));
    }
  }

  private void list(String label, List<String> items) {
    int digits = Integer.toString(items.size()).length();
    for (int i = 0; i < items.size(); i++) {
      String number = Integer.toString(i + 1);
      String first = items.size() == 1 ? "" : " ".repeat(digits - number.length()) + number + "  ";
      sheet.hanging(label(i == 0 ? label : "") + first, items.get(i));
    }
  }

  private void line(String label, String words) {
    sheet.hanging(label(label), words);
  }

  private static String label(String words) {
    return INDENT + words + " ".repeat(LABEL - words.length());
  }
}
