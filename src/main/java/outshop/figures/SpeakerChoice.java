package outshop.figures;

import outshop.units.Amount;
import outshop.units.Exact;

/**
 * Something that could hang on the plan's amplifier, or hangs on it now, and how loud it is.
 *
 * @param name of the fitted speakers, else the id in the catalogue
 * @param title in the catalogue
 * @param ohms impedance that the amplifier sees
 * @param leastOhms the least that the amplifier stands
 * @param byLoadDecibels louder than the reference, by its impedance alone; below zero if quieter
 * @param byAllDecibels the same with its sensitivity counted as well; missing where that of either
 *     is not stated, absent for a bare load
 * @param watts that the amplifier puts into it at most
 * @param ratedWatts that it takes; absent for a bare load and for several speakers, which share
 */
public record SpeakerChoice(
    String name,
    String title,
    Role role,
    Amount ohms,
    Amount leastOhms,
    Amount byLoadDecibels,
    Amount byAllDecibels,
    Amount watts,
    Amount ratedWatts) {

  /** What stands in the row. */
  public enum Role {
    /** What the plan has fitted. */
    FITTED,
    /** The load for which the amplifier's power is stated; no speaker of its own. */
    RATED_LOAD,
    /** Another speaker of the catalogue, alone. */
    OTHER
  }

  /** Whether its impedance is known to lie below what the amplifier stands. */
  public boolean loadsTooMuch() {
    return ohms instanceof Amount.Known o
        && leastOhms instanceof Amount.Known least
        && Exact.below(o.value(), least.value());
  }
}
