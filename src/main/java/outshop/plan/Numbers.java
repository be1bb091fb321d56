package outshop.plan;

import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import outshop.catalogue.Column;
import outshop.input.Problem;
import outshop.input.Shown;
import outshop.input.Tree;
import outshop.units.Exact;
import outshop.units.QuantityReader;
import outshop.units.Unit;

/** Reads the numbers of a plan and weighs whether they can be meant. */
final class Numbers {
  private static final String NONE = "none";

  /** Units whose prefix is easily mistaken by a thousand. */
  private static final Set<Unit> PREFIXED =
      EnumSet.of(
          Unit.VOLTS,
          Unit.AMPS,
          Unit.OHMS,
          Unit.WATTS,
          Unit.AMPERE_HOURS,
          Unit.METRES,
          Unit.KILOGRAMS,
          Unit.SECONDS,
          Unit.HERTZ,
          Unit.FARADS);

  private final Problems problems;

  Numbers(Problems problems) {
    this.problems = problems;
  }

  /**
   * What a number must be.
   *
   * @param low the least plausible value, held
   * @param high the greatest plausible value, held
   * @param orNone whether {@code none} may be written
   */
  private record Demand(Written written, double low, double high, boolean orNone) {
    boolean isWhole() {
      return written.unit() == Unit.COUNT;
    }

    String range() {
      if (Double.isInfinite(low) && Double.isInfinite(high)) {
        return written.example();
      }
      if (Double.isInfinite(high)) {
        return "at least " + written.text(low);
      }
      return Double.isInfinite(low)
          ? "at most " + written.text(high)
          : written.text(low) + " to " + written.text(high);
    }
  }

  /** The number at a key, held in its unit; {@link Double#NaN} for none; empty after an error. */
  OptionalDouble read(Key key, String path, Tree.Text text) {
    boolean orNone = key.type() == Key.Type.QUANTITY_OR_NONE;
    return read(new Demand(Written.like(key), key.low(), key.high(), orNone), path, text);
  }

  /**
   * The number in a column, held in its unit; {@link Double#NaN} for none; empty after an error.
   */
  OptionalDouble read(Column column, String path, Tree.Text text) {
    double scale = column.scale();
    boolean orNone = column.type() == Column.Type.NUMBER_OR_NONE;
    return read(
        new Demand(Written.like(column), column.low() * scale, column.high() * scale, orNone),
        path,
        text);
  }

  private OptionalDouble read(Demand demand, String path, Tree.Text text) {
    if (text.text().equals(NONE)) {
      if (demand.orNone()) {
        return OptionalDouble.of(Double.NaN);
      }
      String expected = "a value, such as " + demand.written().example();
      problems.error(text, path, NONE, "\"none\" is no answer here", expected);
      return OptionalDouble.empty();
    }
    QuantityReader.Result result =
        QuantityReader.read(Shown.text(text.text()), demand.written().unit());
    if (result instanceof QuantityReader.Unreadable unreadable) {
      String expected = withOwnExample(unreadable.expected(), demand.written());
      problems.error(
          text,
          path,
          text.text(),
          "not the right form",
          demand.orNone() ? orNone(expected) : expected);
      return OptionalDouble.empty();
    }
    return weighed(demand, path, text, ((QuantityReader.Read) result).value());
  }

  private OptionalDouble weighed(Demand demand, String path, Tree.Text text, double value) {
    if (demand.isWhole() && value != Math.rint(value)) {
      String example = "a whole number, such as " + demand.written().example();
      problems.error(text, path, text.text(), "not a whole number", example);
      return OptionalDouble.empty();
    }
    boolean impossible =
        (demand.low() >= 0 && value < 0)
            || (demand.low() > 0 && value == 0)
            || (demand.written().unit() == Unit.SHARE && Exact.above(value, 1))
            || demand.written().unit().isBeyondReason(value, demand.low(), demand.high());
    if (impossible) {
      problems.error(text, path, text.text(), "the value is not possible", demand.range());
      return OptionalDouble.empty();
    }
    if (Exact.below(value, demand.low()) || Exact.above(value, demand.high())) {
      problems.add(unlikely(demand, path, text, value));
    }
    return OptionalDouble.of(value);
  }

  private Problem unlikely(Demand demand, String path, Tree.Text text, double value) {
    return new Problem(
        Problem.Severity.UNLIKELY,
        problems.place(text, path),
        text.text(),
        "an unlikely value",
        demand.range() + slip(demand, value));
  }

  /** The value with its unit's prefix mended, where that would be plausible. */
  private static String slip(Demand demand, double value) {
    if (PREFIXED.contains(demand.written().unit())) {
      for (double factor : new double[] {1e-3, 1e3}) {
        double meant = value * factor;
        if (!Exact.below(meant, demand.low()) && !Exact.above(meant, demand.high())) {
          return " (perhaps " + demand.written().text(meant) + " is meant)";
        }
      }
    }
    return "";
  }

  private static String withOwnExample(String expected, Written written) {
    return expected.replace(
        "\"" + written.unit().example() + "\"", "\"" + written.example() + "\"");
  }

  private static String orNone(String expected) {
    return expected + ", or none";
  }
}
