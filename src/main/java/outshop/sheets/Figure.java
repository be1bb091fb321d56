package outshop.sheets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Unit;

/**
 * A number on a sheet.
 *
 * @param name small letters, digits, hyphens and points; one name stands for one value on a sheet
 * @param value in {@code unit}
 */
public record Figure(String name, double value, Unit unit) {
  private static final int DIGITS = 3;

  /** A known value as it is. */
  static Figure of(String name, Amount.Known amount) {
    return new Figure(name, amount.value(), amount.unit());
  }

  /** A count. */
  static Figure count(String name, int count) {
    return new Figure(name, count, Unit.COUNT);
  }

  /**
   * A value rounded down to the digits that are shown, so that the edge on paper is the edge that
   * counts.
   */
  static Figure down(String name, double value, Unit unit) {
    return new Figure(name, rounded(value, RoundingMode.FLOOR), unit);
  }

  /** As {@link #down}, rounded up. */
  static Figure up(String name, double value, Unit unit) {
    return new Figure(name, rounded(value, RoundingMode.CEILING), unit);
  }

  private static double rounded(double value, RoundingMode mode) {
    return BigDecimal.valueOf(value).round(new MathContext(DIGITS, mode)).doubleValue();
  }

  /** With its unit, for people. */
  public String text() {
    return AmountText.text(value, unit);
  }
}
