package outshop.plan;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outshop.catalogue.Column;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/**
 * How numbers of one key or column are written: in the unit its example uses, such as millimetres
 * for a bay and metres for a lead.
 *
 * @param unit the unit values are held in
 * @param spelling the unit as written after a number; empty for plain numbers
 * @param scale {@code held = written x scale}
 * @param example as it would be written
 */
record Written(Unit unit, String spelling, double scale, String example) {
  private static final Pattern EXAMPLE = Pattern.compile("([0-9.]+) ?(.*)");

  /** As a key's example writes it. */
  static Written like(Key key) {
    Matcher example = EXAMPLE.matcher(key.example());
    if (!example.matches() || example.group(2).isEmpty()) {
      return new Written(key.unit(), "", 1, key.example());
    }
    String spelling = example.group(2);
    return new Written(
        key.unit(), spelling, held("1 " + spelling, key.unit()).orElseThrow(), key.example());
  }

  /** In the unit of a column's name, which its example leaves out. */
  static Written like(Column column) {
    String spelling = spelling(column.unit(), column.scale());
    String number = column.example().equals("none") ? plain(column.low()) : column.example();
    String example = spelling.isEmpty() ? number : number + " " + spelling;
    return new Written(column.unit(), spelling, column.scale(), example);
  }

  /** A held value as it would be written, to six digits. */
  String text(double value) {
    String number = plain(value / scale);
    return spelling.isEmpty() ? number : number + " " + spelling;
  }

  private static String plain(double number) {
    String text =
        new BigDecimal(number).round(new MathContext(6)).stripTrailingZeros().toPlainString();
    return text.equals("-0") ? "0" : text;
  }

  private static String spelling(Unit unit, double scale) {
    for (String spelling : QuantityReader.spellings(unit)) {
      if (held("1 " + spelling, unit).equals(Optional.of(scale))) {
        return spelling;
      }
    }
    return unit.symbol();
  }

  private static Optional<Double> held(String text, Unit unit) {
    return QuantityReader.read(text, unit) instanceof QuantityReader.Read read
        ? Optional.of(read.value())
        : Optional.empty();
  }
}
