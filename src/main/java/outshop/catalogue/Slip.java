package outshop.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import outshop.units.Exact;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/**
 * Guesses which slip of the pen turned a plausible value into an unlikely one: another unit of the
 * same quantity, or the decimal point in the wrong place.
 */
final class Slip {
  private static final String[] FACTORS = {"0.1", "10", "0.01", "100", "0.001", "1000"};

  private final Column column;
  private final NumberForm form;

  private Slip(Column column, NumberForm form) {
    this.column = column;
    this.form = form;
  }

  /**
   * {@code , perhaps 3.4 Ah (a figure in mAh?)}, or an empty text where no slip gives a plausible
   * value.
   *
   * @param held the unlikely value, in the column's unit
   * @param form how it was written
   */
  static String likely(Column column, double held, NumberForm form) {
    boolean guessable =
        form.isReadable()
            && column.unit() != Unit.COUNT
            && column.unit() != Unit.GAUGE
            && column.unit() != Unit.MONEY;
    if (!guessable) {
      return "";
    }
    Slip slip = new Slip(column, form);
    if (column.unit() == Unit.CELSIUS) {
      return form.unit().isEmpty() ? slip.fahrenheit(held) : "";
    }
    String otherUnit = slip.otherUnit(held);
    return otherUnit.isEmpty() ? slip.point(held) : otherUnit;
  }

  /**
   * The same figure in another unit: {@code 3400} for 3400 mAh in a column of Ah. Where several
   * would do, the one that moves the value least.
   */
  private String otherUnit(double held) {
    String best = "";
    double bestMove = Double.MAX_VALUE;
    for (String spelling : QuantityReader.spellings(column.unit())) {
      QuantityReader.Result result =
          QuantityReader.read(form.digits() + " " + spelling, column.unit());
      if (!(result instanceof QuantityReader.Read read) || !isPlausible(read.value())) {
        continue;
      }
      double move = Math.abs(Math.log(read.value() / held));
      if (Exact.below(move, bestMove)) {
        bestMove = move;
        best = perhaps(read.value()) + why(spelling);
      }
    }
    return best;
  }

  private String why(String spelling) {
    return form.unit().isEmpty()
        ? " (a figure in " + spelling + "?)"
        : " (" + spelling + ", not " + form.unit() + "?)";
  }

  private String point(double held) {
    for (String factor : FACTORS) {
      double moved = QuantityReader.scaled(factor, held);
      if (isPlausible(moved)) {
        return perhaps(moved) + " (the decimal point?)";
      }
    }
    return "";
  }

  private String fahrenheit(double held) {
    double celsius = (held - 32) / 1.8;
    return isPlausible(celsius) ? perhaps(celsius) + " (a figure in Fahrenheit?)" : "";
  }

  private boolean isPlausible(double held) {
    return !Exact.below(held, column.low() * column.scale())
        && !Exact.above(held, column.high() * column.scale());
  }

  private String perhaps(double held) {
    BigDecimal number =
        BigDecimal.valueOf(held)
            .divide(BigDecimal.valueOf(column.scale()))
            .round(new MathContext(4));
    return ", perhaps " + PartChecks.withSymbol(NumberForm.shown(number), column);
  }
}
