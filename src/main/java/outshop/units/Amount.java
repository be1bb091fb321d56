package outshop.units;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * A quantity as far as it is known. A value nobody stated is {@link Missing} and stays missing
 * through every computation that needs it; a value stated not to exist ({@code none}) is {@link
 * Absent}; everything else is {@link Known}, as a value together with the range in which
 * assumptions let it lie.
 */
public sealed interface Amount permits Amount.Known, Amount.Missing, Amount.Absent {

  /**
   * A value with the range its assumptions leave open ({@code low == value == high} when nothing is
   * assumed).
   *
   * @param value in {@code unit}
   * @param label what it is, in words
   * @param how the formula or the source, in words
   * @param from the values it was computed from, for the working
   */
  record Known(
      double value,
      double low,
      double high,
      Unit unit,
      Origin origin,
      String label,
      String how,
      List<Known> from)
      implements Amount {
    public Known {
      if (!(low <= value && value <= high)) {
        throw new IllegalArgumentException(
            "%s: %s is not within %s..%s".formatted(label, value, low, high));
      }
      from = List.copyOf(from);
    }

    /** The value. Who decides by it decides for one end of a range; {@link Peeks} notes that. */
    @Override
    public double value() {
      if (low != high) {
        Peeks.note();
      }
      return value;
    }

    /** The value, for those who go on to look at the whole range, or only show it. */
    public double middle() {
      return value;
    }

    /**
     * Whether some value behind this one was assumed, so that the truth may lie elsewhere in the
     * range.
     */
    public boolean isAssumed() {
      return origin == Origin.ASSUMED;
    }

    /** The assumed values behind this one, each once, in the order they entered. */
    public List<Known> assumptions() {
      List<Known> found = new ArrayList<>();
      collectAssumptions(found);
      return found;
    }

    private void collectAssumptions(List<Known> found) {
      if (origin != Origin.ASSUMED) {
        return;
      }
      if (from.isEmpty()) {
        if (found.stream().noneMatch(f -> f.label.equals(label))) {
          found.add(this);
        }
        return;
      }
      for (Known part : from) {
        part.collectAssumptions(found);
      }
    }

    /** As for any two equal ones, without going through everything behind them. */
    @Override
    public int hashCode() {
      return 31 * label.hashCode() + Double.hashCode(value);
    }

    @Override
    public Known named(String newLabel) {
      return new Known(value, low, high, unit, origin, newLabel, how, from);
    }
  }

  /**
   * Nobody stated it.
   *
   * @param wants what is wanted, each once, in order of name
   * @param open whether it may well be stated: it belongs to a part that stands for several, of
   *     which some state it. What a blank would be taken for must not take its place
   */
  record Missing(List<Want> wants, boolean open) implements Amount {
    public Missing(List<Want> wants) {
      this(wants, false);
    }

    public Missing {
      wants = wants.size() < 2 ? List.copyOf(wants) : List.copyOf(new TreeSet<>(wants));
      if (wants.isEmpty()) {
        throw new IllegalArgumentException("a missing amount names what is missing");
      }
    }

    @Override
    public Missing named(String newLabel) {
      return this;
    }
  }

  /** Stated not to exist, such as a receiver without a low-voltage cut-off. */
  record Absent(String label) implements Amount {
    @Override
    public Absent named(String newLabel) {
      return new Absent(newLabel);
    }
  }

  /** The same amount under another label. */
  Amount named(String newLabel);

  /** A value taken as it stands from a data sheet, a reading, a plan or a standard. */
  static Known known(double value, Unit unit, Origin origin, String label, String how) {
    return new Known(value, value, value, unit, origin, label, how, List.of());
  }

  /** A default for a value nobody stated: used, but carried as the whole range it may lie in. */
  static Known assumed(double value, double low, double high, Unit unit, String label, String why) {
    return new Known(value, low, high, unit, Origin.ASSUMED, label, why, List.of());
  }

  /** A value nobody stated. */
  static Missing missing(String where, String what, String how) {
    return new Missing(List.of(new Want(where, what, how)));
  }

  /**
   * A value computed from others. It is missing if any of them is missing or absent, naming them
   * all; its range is what the ranges of the others allow, found at their ends, so the formula must
   * rise or fall steadily with each value.
   *
   * @param formula gets the values in the order of {@code inputs}, in their units
   */
  static Amount computed(
      String label, Unit unit, String how, ToDoubleFunction<double[]> formula, Amount... inputs) {
    return computed(label, unit, how, formula, List.of(inputs));
  }

  /**
   * As {@link #computed(String, Unit, String, ToDoubleFunction, Amount...)}, for a list of values.
   */
  static Amount computed(
      String label,
      Unit unit,
      String how,
      ToDoubleFunction<double[]> formula,
      List<? extends Amount> inputs) {
    List<Want> wants = new ArrayList<>();
    List<Known> known = new ArrayList<>();
    boolean open = false;
    for (Amount input : inputs) {
      if (input instanceof Missing missing) {
        wants.addAll(missing.wants());
        open |= missing.open();
      } else if (input instanceof Known k) {
        known.add(k);
      } else if (input instanceof Absent absent) {
        return new Absent(absent.label());
      }
    }
    if (!wants.isEmpty()) {
      return new Missing(wants, open);
    }
    return Ranges.apply(label, unit, how, formula, known);
  }

  /** The sum of amounts of one unit; missing if any is missing. An absent one adds nothing. */
  static Amount sum(String label, Unit unit, List<? extends Amount> parts) {
    List<Amount> present = new ArrayList<>();
    for (Amount part : parts) {
      if (!(part instanceof Absent)) {
        present.add(part);
      }
    }
    return computed(
        label,
        unit,
        "sum",
        v -> {
          double total = 0;
          for (double x : v) {
            total += x;
          }
          return total;
        },
        present);
  }

  /** This amount times a plain factor, with the factor's reason as its working. */
  default Amount times(double factor, String label, String how) {
    if (this instanceof Known k) {
      return computed(label, k.unit(), how, v -> v[0] * factor, k);
    }
    return this;
  }

  /** This amount if it is not missing, or open; else the other. */
  default Amount orElse(Amount other) {
    return this instanceof Missing m && !m.open() ? other : this;
  }

  default boolean isKnown() {
    return this instanceof Known;
  }

  default boolean isMissing() {
    return this instanceof Missing;
  }

  default boolean isAbsent() {
    return this instanceof Absent;
  }

  /**
   * The known value in its unit. Errors: {@link IllegalStateException} if it is not known; ask
   * first.
   */
  default Known get() {
    if (this instanceof Known k) {
      return k;
    }
    throw new IllegalStateException("not known: " + this);
  }
}
