package outshop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;

/** The numbers of a finding as every renderer writes them. */
public final class Numbers {
  private Numbers() {}

  /**
   * One line of the numbers.
   *
   * @param label such as {@code has}, {@code at most}, {@code over by}
   * @param value with its unit
   * @param note what the value is and how it was come by; empty where that is plain
   */
  public record Row(String label, String value, String note) {}

  /**
   * The demand, the limit, the bound where it is another value than the limit, and how far past it
   * or how much room is left. Empty where the rule compares nothing.
   */
  public static List<Row> rows(Finding finding) {
    if (finding.demand().isEmpty() || finding.limit().isEmpty() || finding.mark().isEmpty()) {
      return List.of();
    }
    Amount.Known demand = finding.demand().get();
    Amount.Known limit = finding.limit().get();
    Finding.Mark mark = finding.mark().get();
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
    past(finding, mark).ifPresent(rows::add);
    return rows;
  }

  private static Optional<Row> past(Finding finding, Finding.Mark mark) {
    if (finding.past() > 0) {
      String by = mark.upper() ? "over by" : "short by";
      return Optional.of(new Row(by, AmountText.percent(finding.past()), ""));
    }
    if (finding.outcome() == Outcome.FINE) {
      boolean none = finding.past() == 0;
      String room = none ? "none" : AmountText.percent(-finding.past());
      return Optional.of(new Row("room", room, ""));
    }
    return Optional.empty();
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
}
