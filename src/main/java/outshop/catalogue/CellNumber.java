package outshop.catalogue;

import java.math.BigDecimal;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/** Cells that hold numbers. */
final class CellNumber {
  private CellNumber() {}

  static Cell read(Column column, String text, NumberForm form) {
    if (text.equalsIgnoreCase("none")) {
      return column.type() == Column.Type.NUMBER_OR_NONE
          ? new Cell.None()
          : new Cell.Wrong(text, "none is not possible in this column", expected(column));
    }
    if (!form.isReadable()) {
      return refused(column, text, form);
    }
    if (form.unit().isEmpty()) {
      double held = QuantityReader.scaled(form.digits(), column.scale());
      return Double.isInfinite(held)
          ? new Cell.Wrong(text, "not a number", expected(column))
          : number(held, form);
    }
    return withUnit(column, text, form);
  }

  /** What a number column takes, such as {@code a number in mA, such as 55, or none}. */
  static String expected(Column column) {
    boolean plain = column.unit() == Unit.COUNT || column.unit() == Unit.MONEY;
    String example = column.example().equals("none") ? shown(column.low()) : column.example();
    return (plain ? "a plain number" : "a number in " + column.symbol())
        + ", such as "
        + example
        + (column.type() == Column.Type.NUMBER_OR_NONE ? ", or none if there is no such thing" : "")
        + CellText.OR_BLANK;
  }

  static String shown(double number) {
    return NumberForm.shown(BigDecimal.valueOf(number));
  }

  private static Cell refused(Column column, String text, NumberForm form) {
    return switch (form.sort()) {
      case AMBIGUOUS ->
          new Cell.Wrong(
              text,
              "a comma that may part decimals or thousands",
              form.rightForm() + ", with nothing between thousands");
      case GROUPED ->
          new Cell.Wrong(
              text,
              "a number with separators between thousands",
              form.rightForm() + ", with nothing between thousands");
      default -> new Cell.Wrong(text, "not a number", expected(column));
    };
  }

  private static Cell withUnit(Column column, String text, NumberForm form) {
    QuantityReader.Result result =
        QuantityReader.read(form.digits() + " " + form.unit(), column.unit());
    if (result instanceof QuantityReader.Read read) {
      return number(read.value(), form);
    }
    String expected = ((QuantityReader.Unreadable) result).expected();
    return new Cell.Wrong(text, "not a number in this column's unit", expected);
  }

  /** Without the minus of a negative zero, so that equal cells give equal parts. */
  private static Cell number(double held, NumberForm form) {
    Cell.Decimals decimals =
        switch (form.sort()) {
          case DECIMAL_COMMA -> Cell.Decimals.COMMA;
          case PERHAPS_THOUSANDS -> Cell.Decimals.PERHAPS_THOUSANDS;
          default -> Cell.Decimals.PLAIN;
        };
    return new Cell.Quantity(held + 0.0, decimals);
  }
}
