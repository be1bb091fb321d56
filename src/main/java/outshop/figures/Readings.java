package outshop.figures;

import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Unit;

/**
 * What readings on the bench say of the thing that was read: which kind of lamp it is, what it
 * draws in the moment it is switched on, what a motor draws with its wheels held.
 */
final class Readings {
  /**
   * The volts of a first test from a bench supply, one pair of leads at a time, before any
   * electronics. Common practice, no source.
   */
  static final double BENCH_VOLTS = 7;

  /** Two readings of one filament differ by no more than this share of the greater. From memory. */
  static final double SCATTER = 0.1;

  /**
   * No filament lamp of such a locomotive reads more than this, cold; what does is read through
   * something else. Common practice, no source.
   */
  static final double MOST_FILAMENT_OHMS = 1000;

  /** The most that a digital meter puts out on its ohm ranges. From memory. */
  static final double OHMMETER_VOLTS = 1.5;

  private Readings() {}

  /** What two readings of a lamp, the meter's leads swapped in between, say of it. */
  enum Lamp {
    /** A finite reading, alike both ways: a wire that glows. */
    FILAMENT,
    /** Readings that differ: something that conducts one way. */
    DIODE,
    /** Open both ways, or a reading that fits neither: it may be a white LED, or broken. */
    UNDECIDED,
    /** A reading is missing. */
    UNREAD
  }

  /**
   * What a lamp's readings say.
   *
   * @param forward in ohms, one way round; absent where the meter showed open
   * @param reverse in ohms, the other way round
   */
  static Lamp lamp(Amount forward, Amount reverse) {
    if (forward.isMissing() || reverse.isMissing()) {
      return Lamp.UNREAD;
    }
    if (forward.isAbsent() && reverse.isAbsent()) {
      return Lamp.UNDECIDED;
    }
    if (!(forward instanceof Amount.Known one) || !(reverse instanceof Amount.Known other)) {
      return Lamp.DIODE;
    }
    if (!alike(one.value(), other.value())) {
      return Lamp.DIODE;
    }
    return Exact.above(Math.max(one.value(), other.value()), MOST_FILAMENT_OHMS)
        ? Lamp.UNDECIDED
        : Lamp.FILAMENT;
  }

  private static boolean alike(double one, double other) {
    return !Exact.above(Math.abs(one - other), SCATTER * Math.max(one, other));
  }

  /** The two readings in words that fill a sentence, such as {@code 25.5 ohm both ways}. */
  static String lampWords(Amount forward, Amount reverse) {
    String one = words(forward);
    String other = words(reverse);
    return one.equals(other) ? one + " both ways" : one + " one way and " + other + " the other";
  }

  private static String words(Amount reading) {
    return reading instanceof Amount.Known known
        ? AmountText.text(known)
        : reading.isAbsent() ? "open" : "nothing stated";
  }

  /** How to decide what an ohmmeter cannot. */
  static String howToDecide() {
    return "a meter's diode range both ways, or a bench supply of 5 V limited to 5 mA: an ohmmeter's "
        + AmountText.text(OHMMETER_VOLTS, Unit.VOLTS)
        + " at most do not reach the "
        + AmountText.text(LedColour.WHITE.leastVolts(), Unit.VOLTS)
        + " of a white or blue LED";
  }

  /** Whether an ohmmeter can make some LED of this colour conduct at all. */
  static boolean ohmmeterReaches(LedColour colour) {
    return !Exact.above(colour.leastVolts(), OHMMETER_VOLTS);
  }

  /** What flows through a bare resistance, such as a cold filament or a motor held still: V / R. */
  static Amount amps(String label, Amount volts, Amount ohms) {
    return Amount.computed(label, Unit.AMPS, "volts / resistance", v -> v[0] / v[1], volts, ohms);
  }
}
