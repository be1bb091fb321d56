package outshop.outside;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import outshop.findings.Outcome;
import outshop.rules.Bound;
import outshop.rules.RuleBook;

/** Gathers the checks of one area. Every check has the source that was named last. */
final class CheckList {
  /** How exactly a solved circuit meets a whole number, as a share of it. */
  private static final double SOLVED = 1e-6;

  /** A book that prints one or two digits is taken to mean its value this closely. */
  private static final double MOST = 0.02;

  private static final RuleBook BOOK = RuleBook.load();

  private final String area;
  private final List<OutsideCheck> checks = new ArrayList<>();
  private String source = "";

  CheckList(String area) {
    this.area = area;
  }

  /** Where the expected values of the checks that follow come from. */
  CheckList from(String where) {
    source = where;
    return this;
  }

  /** The program's value may differ by a tolerance, in the unit. */
  CheckList within(
      double tolerance, String id, String what, String expected, String unit, DoubleSupplier got) {
    return add(tolerance, id, what, expected, unit, Optional.empty(), got);
  }

  private CheckList add(
      double tolerance,
      String id,
      String what,
      String expected,
      String unit,
      Optional<String> rule,
      DoubleSupplier got) {
    checks.add(
        new OutsideCheck(
            area.replaceAll("[^a-z0-9]+", "-") + "/" + id,
            area,
            what + rule.map(r -> " (" + r + ")").orElse(""),
            source,
            new BigDecimal(expected),
            tolerance,
            unit,
            rule,
            got));
    return this;
  }

  /** The two must be the same. */
  CheckList same(String id, String what, String expected, String unit, DoubleSupplier got) {
    return within(0, id, what, expected, unit, got);
  }

  /**
   * The two agree to half of the last digit printed, and at least within 2 %.
   *
   * @param printed as the book has it, "20.0" for three digits, "2.0E2" for 200 of which two count
   */
  CheckList printed(String id, String what, String printed, String unit, DoubleSupplier got) {
    BigDecimal value = new BigDecimal(printed);
    double half = 0.5 * value.ulp().doubleValue();
    return within(
        Math.min(half, MOST * Math.abs(value.doubleValue())), id, what, printed, unit, got);
  }

  /** The source's whole number is exact; what remains is the rounding of the solution. */
  CheckList whole(String id, String what, String number, String unit, DoubleSupplier got) {
    return within(SOLVED * Double.parseDouble(number), id, what, number, unit, got);
  }

  /** The program's value lies between two published ones. */
  CheckList between(
      String low, String high, String id, String what, String unit, DoubleSupplier got) {
    BigDecimal least = new BigDecimal(low);
    BigDecimal most = new BigDecimal(high);
    BigDecimal two = BigDecimal.valueOf(2);
    return within(
        most.subtract(least).divide(two).doubleValue(),
        id,
        what + ", between " + low + " and " + high,
        least.add(most).divide(two).toString(),
        unit,
        got);
  }

  /** The worst that a rule answers to a plan. */
  CheckList outcome(String id, String what, String rule, Outcome expected, Supplier<Trial> plan) {
    return add(
        0,
        id,
        what,
        String.valueOf(expected.ordinal()),
        OutsideCheck.OUTCOME,
        Optional.of(rule),
        () -> plan.get().outcome(rule).ordinal());
  }

  /** From which share of the limit on a rule gives an outcome. */
  CheckList bound(String id, String what, String expected, String rule, Outcome outcome) {
    return add(0, id, what, expected, "", Optional.of(rule), () -> factor(rule, outcome));
  }

  List<OutsideCheck> all() {
    return List.copyOf(checks);
  }

  private static double factor(String rule, Outcome outcome) {
    return BOOK.find(rule).orElseThrow().bounds().stream()
        .filter(bound -> bound.outcome() == outcome)
        .mapToDouble(Bound::factor)
        .findFirst()
        .orElseThrow();
  }
}
