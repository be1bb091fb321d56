package outshop.figures;

import java.util.Optional;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * Forward volts of a single LED by the colour of its light.
 *
 * <p>Source: T. R. Kuphaldt, Lessons in Electric Circuits, volume III (Semiconductors), chapter 3,
 * table of optical and electrical properties of LEDs.
 */
enum LedColour {
  RED("red", 1.5, 2.4),
  ORANGE("orange", 2.1, 2.2),
  YELLOW("yellow", 1.7, 2.8),
  GREEN("green", 1.7, 2.8),
  BLUE("blue", 3, 4),
  WHITE("white", 3, 4),
  WARM_WHITE("warm-white", 3, 4);

  private final String word;
  private final double leastVolts;
  private final double mostVolts;

  LedColour(String word, double leastVolts, double mostVolts) {
    this.word = word;
    this.leastVolts = leastVolts;
    this.mostVolts = mostVolts;
  }

  /** The colour of that word, if it is one. */
  static Optional<LedColour> of(String word) {
    for (LedColour colour : values()) {
      if (colour.word.equals(word)) {
        return Optional.of(colour);
      }
    }
    return Optional.empty();
  }

  double leastVolts() {
    return leastVolts;
  }

  double mostVolts() {
    return mostVolts;
  }

  /** Its forward volts where nobody stated them: the whole published range. */
  Amount forwardVolts(String led) {
    return Amount.assumed(
        (leastVolts + mostVolts) / 2,
        leastVolts,
        mostVolts,
        Unit.VOLTS,
        led + ": forward_volts",
        "not stated; published range of a " + word + " LED");
  }
}
