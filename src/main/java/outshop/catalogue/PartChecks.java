package outshop.catalogue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.units.Exact;
import outshop.units.Unit;

/**
 * Judges the values of one part by themselves: impossible ones (errors), unlikely ones (probably a
 * slip of unit) and ones that contradict each other. A value exactly at a bound passes.
 */
public final class PartChecks {
  /** Where a part's values stand and how they were written, for messages. */
  public interface Written {
    Place place(String column);

    /** The value as the user wrote it. */
    String text(String column);
  }

  private final Kind kind;
  private final Map<String, Double> numbers;
  private final Map<String, String> words;
  private final Written written;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Double> possible = new HashMap<>();
  private final Map<String, Double> likely = new HashMap<>();

  private PartChecks(
      Kind kind, Map<String, Double> numbers, Map<String, String> words, Written written) {
    this.kind = kind;
    this.numbers = numbers;
    this.words = words;
    this.written = written;
  }

  /**
   * All that is wrong with a part's values.
   *
   * @param numbers by column, held in the column's unit; {@link Double#NaN} for {@code none}
   * @param words by column
   */
  public static List<Problem> check(
      Kind kind, Map<String, Double> numbers, Map<String, String> words, Written written) {
    PartChecks checks = new PartChecks(kind, numbers, words, written);
    checks.run();
    return checks.problems;
  }

  private void run() {
    for (Column column : Columns.of(kind)) {
      Double held = numbers.get(column.name());
      if (held != null && !held.isNaN()) {
        single(column, held);
      }
    }
    for (List<String> chain : Rising.of(kind)) {
      rising(chain);
    }
    for (Contradictions.Found found : Contradictions.in(kind, likely, words)) {
      problems.add(
          new Problem(
              Problem.Severity.UNLIKELY,
              written.place(found.column()),
              written.text(found.column()),
              found.what(),
              ""));
    }
  }

  private void single(Column column, double held) {
    String impossible = impossible(column, held);
    if (!impossible.isEmpty()) {
      error(column.name(), impossible, possibleForm(column));
      return;
    }
    double low = column.low() * column.scale();
    if (column.unit().isBeyondReason(held, low, column.high() * column.scale())) {
      String size = Exact.above(held, low) ? "great" : "small";
      error(column.name(), "impossible: far too " + size, range(column));
      return;
    }
    possible.put(column.name(), held);
    double scale = column.scale();
    boolean outside =
        Exact.below(held, column.low() * scale) || Exact.above(held, column.high() * scale);
    if (!outside) {
      likely.put(column.name(), held);
      return;
    }
    String text = written.text(column.name());
    problems.add(
        new Problem(
            Problem.Severity.UNLIKELY,
            written.place(column.name()),
            text,
            "unlikely value" + Slip.likely(column, held, NumberForm.of(text)),
            range(column)));
  }

  private static String impossible(Column column, double held) {
    if (column.unit() == Unit.CELSIUS && held < -273.15) {
      return "impossible: below absolute zero";
    }
    if (column.low() >= 0 && held < 0) {
      return "impossible: below zero";
    }
    if (column.low() > 0 && held == 0) {
      return "impossible: zero";
    }
    boolean whole = column.unit() == Unit.COUNT || column.unit() == Unit.GAUGE;
    return whole && held != Math.rint(held) ? "impossible: not a whole number" : "";
  }

  private static String possibleForm(Column column) {
    boolean whole = column.unit() == Unit.COUNT || column.unit() == Unit.GAUGE;
    return (whole ? "a whole number" : "a number")
        + (column.low() > 0 ? " above zero" : " above absolute zero")
        + (column.type() == Column.Type.NUMBER_OR_NONE ? ", or none if there is no such thing" : "")
        + CellText.OR_BLANK;
  }

  /** Each known value of the chain against the next known one. */
  private void rising(List<String> chain) {
    String lower = "";
    for (String column : chain) {
      if (!possible.containsKey(column)) {
        continue;
      }
      if (!lower.isEmpty() && Exact.above(possible.get(lower), possible.get(column))) {
        error(
            lower,
            "impossible: " + lower + " lies above " + column,
            "at most " + stated(column) + " (" + column + ")");
      }
      lower = column;
    }
  }

  private void error(String column, String what, String expected) {
    problems.add(Problem.error(written.place(column), written.text(column), what, expected));
  }

  private String stated(String columnName) {
    return shown(Columns.require(kind, columnName), possible.get(columnName));
  }

  /** A held value as it is written in its column, with the symbol. */
  static String shown(Column column, double held) {
    BigDecimal number = BigDecimal.valueOf(held).divide(BigDecimal.valueOf(column.scale()));
    return withSymbol(NumberForm.shown(number), column);
  }

  static String withSymbol(String number, Column column) {
    return column.symbol().isEmpty() ? number : number + " " + column.symbol();
  }

  private static String range(Column column) {
    return withSymbol(
        CellNumber.shown(column.low()) + " to " + CellNumber.shown(column.high()), column);
  }
}
