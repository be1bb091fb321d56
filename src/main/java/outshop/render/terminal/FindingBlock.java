package outshop.render.terminal;

import java.util.ArrayList;
import java.util.List;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Shown;
import outshop.report.Aspect;
import outshop.report.Basis;
import outshop.report.Lesson;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;

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
        finding.outcome().words() + consequence(finding),
        Paint.of(finding.outcome()));
    sheet.hanging(INDENT, Paint.NONE, finding.headline(), Paint.BOLD);
    line("where", finding.at().described() + ", station " + finding.at().station().words());
  }

  /** What is fine has none. */
  private static String consequence(Finding finding) {
    String words = finding.consequence().word() + ": " + finding.consequence().meaning();
    return switch (finding.outcome()) {
      case FINE -> "";
      case CANNOT_TELL -> ", at worst " + words;
      default -> ", " + words;
    };
  }

  private void data(Finding finding) {
    if (!finding.working().isEmpty()) {
      line("data", finding.sureness().words() + " (the least sure value used)");
    }
  }

  /** One line of the block of numbers. */
  private record Row(String label, String value, String note) {}

  private void numbers(Finding finding) {
    if (finding.demand().isEmpty() || finding.limit().isEmpty() || finding.mark().isEmpty()) {
      return;
    }
    List<Row> rows = rows(finding, finding.demand().get(), finding.limit().get());
    int widest = 0;
    for (Row row : rows) {
      widest = Math.max(widest, Glyphs.columns(row.value()));
    }
    for (Row row : rows) {
      String gap = " ".repeat(widest - Glyphs.columns(row.value()) + 2);
      sheet.hanging(label(row.label()) + row.value() + gap, row.note());
    }
  }

  /** The demand, the limit, the bound where it is another value than the limit, how far past it. */
  private static List<Row> rows(Finding finding, Amount.Known demand, Amount.Known limit) {
    Finding.Mark mark = finding.mark().orElseThrow();
    String side = mark.upper() ? "at most" : "at least";
    String[] has = AmountText.pair(demand, limit);
    List<Row> rows = new ArrayList<>();
    if (Exact.same(mark.value(), limit.value())) {
      rows.add(new Row("has", has[0], source(demand)));
      rows.add(new Row(side, has[1], source(limit)));
    } else {
      String[] bound = AmountText.pair(demand, atMark(mark, limit));
      boolean finer = bound[0].length() > has[0].length();
      String share = AmountText.percent(mark.value() / limit.value());
      String words = share + " of the limit: " + boundOf(finding.outcome());
      rows.add(new Row("has", finer ? bound[0] : has[0], source(demand)));
      rows.add(new Row("limit", has[1], source(limit)));
      rows.add(new Row(side, bound[1], words));
    }
    if (finding.past() > 0) {
      String by = mark.upper() ? "over by" : "short by";
      rows.add(new Row(by, AmountText.percent(finding.past()), ""));
    } else if (finding.outcome() == Outcome.FINE) {
      boolean none = finding.past() == 0;
      rows.add(new Row("room", none ? "none" : AmountText.percent(-finding.past()), ""));
    }
    return rows;
  }

  private static String boundOf(Outcome outcome) {
    return outcome == Outcome.FINE
        ? "the first bound ahead"
        : "the bound of this " + outcome.words();
  }

  private static Amount.Known atMark(Finding.Mark mark, Amount.Known limit) {
    return Amount.known(mark.value(), limit.unit(), limit.origin(), limit.label(), limit.how());
  }

  /** What a value is and how it was come by, in short. */
  private static String source(Amount.Known value) {
    boolean said = value.how().startsWith("circuit solved");
    return said ? value.label() + " (circuit solved)" : value.label() + " (" + value.how() + ")";
  }

  private void remarks(Finding finding) {
    if (finding.softened()) {
      line(
          "softened",
          "at the values used this is a violation; it is counted as a warning because it rests on"
              + " values nobody stated");
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
