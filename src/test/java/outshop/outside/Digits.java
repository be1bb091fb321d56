package outshop.outside;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Writes numbers with so many significant digits. */
final class Digits {
  private Digits() {}

  static String six(double value) {
    return most(6, value);
  }

  static String most(int digits, double value) {
    return text(value, new MathContext(digits, RoundingMode.HALF_EVEN));
  }

  static String two(double value) {
    return most(2, value);
  }

  /** One digit, rounded up, so that what it is said to stay within is true. */
  static String upper(double value) {
    return text(value, new MathContext(1, RoundingMode.UP));
  }

  private static String text(double value, MathContext digits) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(digits);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
