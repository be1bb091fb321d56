package outshop.units;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people write them: {@code 2.4 A}, {@code 3400 mAh}, {@code 22 AWG}, {@code 8
 * ohm}.
 */
public final class QuantityReader {
  /** Digits are limited so that every number that matches can be held. */
  private static final Pattern FORM =
      Pattern.compile(
          "([+-]?[0-9]{1,30}(?:\\.[0-9]{1,30})?(?:[eE][+-]?[0-9]{1,2}(?![0-9]))?|[+-]?\\.[0-9]{1,30})"
              + "\\s*(.*)");

  /**
   * No quantity is longer; a longer text is not even looked at, as matching could take for ever.
   */
  private static final int LONGEST = 60;

  private QuantityReader() {}

  /** What a text was read as: a value in its unit, or why it could not be read. */
  public sealed interface Result permits Read, Unreadable {}

  /** A value in {@code unit}. */
  public record Read(double value, Unit unit) implements Result {}

  /**
   * Why a text is no such quantity.
   *
   * @param expected the right form, with an example
   */
  public record Unreadable(String expected) implements Result {}

  /**
   * Reads a text that must be a quantity of one unit.
   *
   * @param text as written
   * @param unit the only unit that will do; for {@link Unit#COUNT} and {@link Unit#MONEY} no unit
   *     may be written
   */
  public static Result read(String text, Unit unit) {
    boolean plain = unit == Unit.COUNT || unit == Unit.MONEY;
    String form = plain ? "a plain number" : "a value in " + unitWords(unit);
    String expected = form + ", such as \"" + unit.example() + "\"";
    if (text.length() > LONGEST) {
      return new Unreadable(expected);
    }
    Matcher matcher = FORM.matcher(text.replace('\u00a0', ' ').replace('\u202f', ' ').trim());
    if (!matcher.matches()) {
      return new Unreadable(commaHint(text, expected));
    }
    double value = new BigDecimal(matcher.group(1)).doubleValue();
    String written = matcher.group(2).trim();
    if (plain) {
      return written.isEmpty() ? new Read(value, unit) : new Unreadable(expected);
    }
    if (written.isEmpty()) {
      return new Unreadable(expected + " (the unit is missing)");
    }
    Optional<Unit.Spelling> spelling = spelling(written, unit);
    if (spelling.isEmpty()) {
      return new Unreadable(
          written.startsWith(",") ? commaHint(text, expected) : expected + wrongUnit(written));
    }
    return new Read(scaled(matcher.group(1), spelling.get().scale()), unit);
  }

  /**
   * A number without a unit, scaled exactly (decimal, not binary): {@code scaled("16.8", 1e-3)} is
   * the double nearest 0.0168.
   */
  public static double scaled(String number, double scale) {
    return new BigDecimal(number).multiply(BigDecimal.valueOf(scale)).doubleValue();
  }

  /** Every unit a person may write for this one, such as {@code V, mV}. */
  public static List<String> spellings(Unit unit) {
    List<String> spellings = new ArrayList<>();
    for (Unit.Spelling spelling : Unit.SPELLINGS) {
      if (spelling.unit() == unit) {
        spellings.add(spelling.text());
      }
    }
    return spellings;
  }

  private static Optional<Unit.Spelling> spelling(String written, Unit unit) {
    for (Unit.Spelling spelling : Unit.SPELLINGS) {
      if (spelling.unit() == unit && spelling.text().equals(written)) {
        return Optional.of(spelling);
      }
    }
    if (unit == Unit.CELSIUS && written.equals("C")) {
      return Optional.of(new Unit.Spelling("C", Unit.CELSIUS, 1));
    }
    if (unit == Unit.PER_HOUR && written.equals("C")) {
      return Optional.of(new Unit.Spelling("C", Unit.PER_HOUR, 1));
    }
    return Optional.empty();
  }

  private static String wrongUnit(String written) {
    for (Unit.Spelling spelling : Unit.SPELLINGS) {
      if (spelling.text().equals(written)) {
        return " (\"" + written + "\" measures " + unitWords(spelling.unit()) + ")";
      }
    }
    for (Unit.Spelling spelling : Unit.SPELLINGS) {
      if (spelling.text().equalsIgnoreCase(written)) {
        return " (\"" + written + "\" is not a unit; perhaps \"" + spelling.text() + "\")";
      }
    }
    return " (\"" + written + "\" is not a unit known here)";
  }

  private static String commaHint(String text, String expected) {
    return text.matches(".*[0-9],[0-9].*") ? expected + " (write a point, not a comma)" : expected;
  }

  private static String unitWords(Unit unit) {
    return unit == Unit.SHARE ? "percent" : unit.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
