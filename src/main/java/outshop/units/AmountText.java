package outshop.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes values for people: three significant digits, a fitting prefix, and never so few digits
 * that two different values look alike.
 */
public final class AmountText {
  private static final int DIGITS = 3;
  private static final int MOST_DIGITS = 9;

  private static final MathContext[] ROUNDED = rounded();

  /** The last bits of a solved figure are chance: 4.545000000000001 is written as 4.545 is. */
  private static final MathContext SETTLED = new MathContext(12, RoundingMode.HALF_EVEN);

  private AmountText() {}

  /** By number of digits. */
  private static MathContext[] rounded() {
    MathContext[] rounded = new MathContext[MOST_DIGITS + 1];
    for (int digits = 0; digits <= MOST_DIGITS; digits++) {
      rounded[digits] = new MathContext(digits, RoundingMode.HALF_EVEN);
    }
    return rounded;
  }

  private static String withoutLastZeros(String decimal) {
    int end = decimal.length();
    while (decimal.charAt(end - 1) == '0') {
      end--;
    }
    return decimal.substring(0, decimal.charAt(end - 1) == '.' ? end - 1 : end);
  }

  /** A value with its unit, such as {@code 16.8 V}, {@code 60 mA}, {@code 62 mm}. */
  public static String text(Amount.Known amount) {
    return text(amount.middle(), amount.unit(), DIGITS);
  }

  /** A value in a unit, with its unit. */
  public static String text(double value, Unit unit) {
    return text(value, unit, DIGITS);
  }

  /** Two values of one unit, with as many digits as it takes to tell them apart if they differ. */
  public static String[] pair(Amount.Known one, Amount.Known other) {
    int digits = DIGITS;
    while (digits < MOST_DIGITS
        && !Exact.same(one.middle(), other.middle())
        && text(one.middle(), one.unit(), digits)
            .equals(text(other.middle(), other.unit(), digits))) {
      digits++;
    }
    return new String[] {
      text(one.middle(), one.unit(), digits), text(other.middle(), other.unit(), digits)
    };
  }

  /** A plain number with three significant digits. */
  public static String number(double value) {
    return number(value, DIGITS);
  }

  /** A share as a percentage, such as {@code 124 %}. */
  public static String percent(double share) {
    return number(share * 100, DIGITS) + " %";
  }

  private static String text(double value, Unit unit, int digits) {
    double size = Math.abs(value);
    return switch (unit) {
      case SHARE -> number(value * 100, digits) + " %";
      case COUNT -> number(value, Math.max(digits, 6));
      case MONEY -> BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
      case GAUGE -> number(value, digits) + " AWG";
      case CELSIUS -> number(value, digits) + " °C";
      case SQUARE_MILLIMETRES -> number(value, digits) + " mm²";
      case METRES -> size < 1 ? number(value * 1000, digits) + " mm" : number(value, digits) + " m";
      case KILOGRAMS ->
          size < 1 ? number(value * 1000, digits) + " g" : number(value, digits) + " kg";
      case AMPS ->
          size > 0 && size < 0.1
              ? number(value * 1000, digits) + " mA"
              : number(value, digits) + " A";
      case OHMS -> ohms(value, size, digits);
      case SECONDS ->
          size > 0 && size < 0.1
              ? number(value * 1000, digits) + " ms"
              : number(value, digits) + " s";
      case HERTZ -> hertz(value, size, digits);
      case FARADS -> number(value * 1e6, digits) + " uF";
      default -> number(value, digits) + " " + unit.symbol();
    };
  }

  private static String ohms(double value, double size, int digits) {
    if (size > 0 && size < 0.5) {
      return number(value * 1000, digits) + " mohm";
    }
    return size >= 10_000 ? number(value / 1000, digits) + " kohm" : number(value, digits) + " ohm";
  }

  private static String hertz(double value, double size, int digits) {
    if (size >= 1e6) {
      return number(value / 1e6, Math.max(digits, 5)) + " MHz";
    }
    return size >= 1000 ? number(value / 1000, digits) + " kHz" : number(value, digits) + " Hz";
  }

  private static String number(double value, int digits) {
    if (value == 0 || Double.isNaN(value) || Double.isInfinite(value)) {
      return value == 0 ? "0" : Double.toString(value);
    }
    BigDecimal settled = BigDecimal.valueOf(value).round(SETTLED);
    BigDecimal rounded = settled.round(ROUNDED[digits]);
    if (rounded.precision() - rounded.scale() > digits) {
      rounded = settled.setScale(0, RoundingMode.HALF_EVEN);
    }
    String plain = rounded.toPlainString();
    return plain.indexOf('.') < 0 ? plain : withoutLastZeros(plain);
  }
}
