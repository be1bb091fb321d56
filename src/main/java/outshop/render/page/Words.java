package outshop.render.page;

import java.util.List;
import java.util.Locale;
import outshop.circuit.Station;
import outshop.findings.Finding;
import outshop.report.Aspect;
import outshop.report.Numbers;
import outshop.report.Report;

/** Small words and groupings of the templates. */
final class Words {
  /** Rows of a table that are shown before the rest waits behind a line that opens. */
  static final int AT_ONCE = 10;

  /** A finding with more steps of working than this may be broken over two printed pages. */
  static final int LONG_WORKING = 16;

  private Words() {}

  static String counted(int count, String noun) {
    return noun + (count == 1 ? "" : "s");
  }

  static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A station's name as a part of an address in the page. */
  static String anchor(Station station) {
    return station.name().toLowerCase(Locale.ROOT);
  }

  static String meaning(Aspect aspect) {
    return switch (aspect) {
      case STOP -> "at least one violation";
      case CAUTION -> "a warning, or something that cannot be told";
      case CLEAR -> "no rule objects; the cautions still hold";
    };
  }

  /** The last line of the numbers: how far past the bound, or the room left. */
  static String decisive(Finding finding) {
    List<Numbers.Row> rows = Numbers.rows(finding);
    if (rows.isEmpty() || finding.past() <= 0) {
      return "";
    }
    Numbers.Row last = rows.get(rows.size() - 1);
    return last.label() + " " + last.value();
  }

  /** The share of a bound that is left, in per cent, at most 100: only for drawing. */
  static double room(Finding finding) {
    return Math.min(100, Math.max(0, -finding.past() * 100));
  }

  static List<Finding> withNumbers(Report report) {
    return report.fine().stream().filter(f -> f.demand().isPresent()).toList();
  }

  static List<Finding> withoutNumbers(Report report) {
    return report.fine().stream().filter(f -> f.demand().isEmpty()).toList();
  }

  static List<Finding> untold(Report report, Station station) {
    return report.cannotTell().stream().filter(f -> f.at().station() == station).toList();
  }
}
