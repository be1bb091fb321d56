package outshop.render.plot;

import java.util.List;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Unit;

/** Values in words, with enough digits to be told from those beside them. */
final class Numbers {
  private Numbers() {}

  /** A value beside others of its row. */
  static String text(Amount.Known value, List<Amount.Known> beside) {
    String text = AmountText.text(value);
    for (Amount.Known other : beside) {
      if (other.unit() == value.unit()) {
        String told = AmountText.pair(value, other)[0];
        text = told.length() > text.length() ? told : text;
      }
    }
    return value.unit() == Unit.DECIBELS && value.value() > 0 ? "+" + text : text;
  }

  /** A value for a table: with its range if it has one, with what is wanted if it is missing. */
  static String cell(Amount amount, List<Amount.Known> beside) {
    if (amount instanceof Amount.Missing missing) {
      return "cannot tell; wanted: "
          + String.join("; ", missing.wants().stream().map(w -> w.name()).toList());
    }
    if (amount instanceof Amount.Known known) {
      boolean itself = known.isAssumed() && known.from().isEmpty() && !hasRange(known);
      return text(known, beside) + range(known) + (itself ? " (assumed)" : "");
    }
    return "none";
  }

  /** The range of a value, such as {@code " (assumed: 1 A to 2 A)"}; empty if it has none. */
  static String range(Amount.Known known) {
    return hasRange(known)
        ? " (assumed: %s to %s)"
            .formatted(
                AmountText.text(known.low(), known.unit()),
                AmountText.text(known.high(), known.unit()))
        : "";
  }

  static boolean hasRange(Amount.Known known) {
    return !Exact.same(known.low(), known.high());
  }
}
