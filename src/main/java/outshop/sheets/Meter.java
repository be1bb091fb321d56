package outshop.sheets;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import outshop.units.Amount;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * What a plain digital multimeter and its leads add to a reading, from memory of such meters: volts
 * 1 % and 0.02 V; amps 2 % and 5 mA; ohms 1.5 % and 0.5 ohm (the leads). The makers' figures of a
 * given meter come before it.
 */
final class Meter {
  static final double VOLTS_SHARE = 0.01;
  static final double VOLTS_PLUS = 0.02;
  static final double AMPS_SHARE = 0.02;
  static final double AMPS_PLUS = 0.005;
  static final double OHMS_SHARE = 0.015;
  static final double OHMS_PLUS = 0.5;

  private Meter() {}

  static double share(Unit unit) {
    return switch (unit) {
      case VOLTS -> VOLTS_SHARE;
      case AMPS -> AMPS_SHARE;
      case OHMS -> OHMS_SHARE;
      default -> throw new IllegalArgumentException("a meter does not read " + unit);
    };
  }

  static double plus(Unit unit) {
    return switch (unit) {
      case VOLTS -> VOLTS_PLUS;
      case AMPS -> AMPS_PLUS;
      case OHMS -> OHMS_PLUS;
      default -> throw new IllegalArgumentException("a meter does not read " + unit);
    };
  }

  /** The least that the meter shows of a value; never below zero. */
  static double least(double value, Unit unit) {
    return Math.max(0, value * (1 - share(unit)) - plus(unit));
  }

  /** The most that the meter shows of a value. */
  static double most(double value, Unit unit) {
    return value * (1 + share(unit)) + plus(unit);
  }

  /** The window of an amount: its range, and what the meter adds. */
  static Expected window(String step, Unit unit, Amount amount) {
    return between(step, unit, amount, amount);
  }

  /** The window from the lower end of one amount to the upper end of another. */
  static Expected between(String step, Unit unit, Amount low, Amount high) {
    if (low instanceof Amount.Known one && high instanceof Amount.Known other) {
      return window(
          step, Math.min(one.low(), other.low()), Math.max(one.high(), other.high()), unit);
    }
    return new Expected.Untold(unit, wants(low, high));
  }

  private static List<Want> wants(Amount... amounts) {
    TreeSet<Want> wants = new TreeSet<>();
    for (Amount amount : amounts) {
      if (amount instanceof Amount.Missing missing) {
        wants.addAll(missing.wants());
      }
    }
    return List.copyOf(wants);
  }

  /** The window of true values from {@code low} to {@code high}. */
  static Expected.Window window(String step, double low, double high, Unit unit) {
    return new Expected.Window(
        Figure.down(step + ".from", least(low, unit), unit),
        Optional.of(Figure.up(step + ".to", most(high, unit), unit)));
  }

  /** A window without an upper end. */
  static Expected.Window atLeast(String step, double low, Unit unit) {
    return new Expected.Window(
        Figure.down(step + ".from", least(low, unit), unit), Optional.empty());
  }
}
