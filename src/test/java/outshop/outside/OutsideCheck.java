package outshop.outside;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import outshop.findings.Outcome;
import outshop.units.Exact;

/**
 * A value from the world outside, and what the program makes of the same inputs.
 *
 * @param id area and name, unique
 * @param area what is checked: a rule family or a kind of figure
 * @param what is compared, with its inputs
 * @param source the standard or book with number, edition and table; says so where it was read
 *     second-hand, is from memory, or is common practice without a source
 * @param expected with the digits that the source prints
 * @param tolerance in the unit; 0 where the values must be the same
 * @param unit {@link #OUTCOME} where the number stands for an outcome's place in its list
 * @param rule that it runs, or whose bound it compares
 * @param got asks the program
 */
public record OutsideCheck(
    String id,
    String area,
    String what,
    String source,
    BigDecimal expected,
    double tolerance,
    String unit,
    Optional<String> rule,
    DoubleSupplier got) {
  static final String OUTCOME = "outcome";

  private static final int FEWEST_DIGITS = 6;

  /** How much rounding may add to a tolerance, as a share of it. */
  private static final double ROUNDING = 1e-9;

  /**
   * Whether a value is the expected one, within the tolerance. A value that is no number is not.
   */
  boolean accepts(double value) {
    double wanted = expected.doubleValue();
    return Exact.same(value, wanted) || Math.abs(value - wanted) <= tolerance * (1 + ROUNDING);
  }

  /** How far its source was read. Errors: {@link java.util.NoSuchElementException} if not said. */
  Reading reading() {
    return Reading.of(source).orElseThrow();
  }

  /** The expected value as the page shows it. */
  String expectedText() {
    return isOutcome() ? words(expected.doubleValue()) : expected.toPlainString() + unitText();
  }

  /** What the program found as the page shows it. */
  String gotText() {
    double value = got.getAsDouble();
    int digits = Math.max(FEWEST_DIGITS, expected.precision());
    return isOutcome() ? words(value) : Digits.most(digits, value) + unitText();
  }

  /** The tolerance as the page shows it. */
  String toleranceText() {
    return isOutcome() || tolerance == 0 ? "the same" : "± " + Digits.two(tolerance) + unitText();
  }

  private boolean isOutcome() {
    return unit.equals(OUTCOME);
  }

  private static String words(double outcome) {
    return Outcome.values()[(int) outcome].words();
  }

  private String unitText() {
    return unit.isEmpty() ? "" : " " + unit;
  }

  @Override
  public String toString() {
    return id + ": " + what;
  }
}
