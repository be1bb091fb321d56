package outshop.figures;

import java.util.Optional;
import outshop.units.Said;

/**
 * How cells of one chemistry are charged.
 *
 * <p>Sources. Volts of a lithium-ion cell: 4.20 V, +/- 50 mV, from the charging practice for cells
 * with cobalt. Lithium iron phosphate: 3.65 V, from memory; the same tolerance is taken. Sealed
 * lead-acid, cyclic: 2.40 to 2.45 V, from memory. Nickel cells are not charged by volts but to a
 * sign of the end. Charge time: capacity / current x 1.2 for lithium, whose last part goes in at
 * falling current, and / 0.7 for nickel, which turns three tenths of the charge into heat: common
 * practice, no source; for lead-acid / 0.7 as well, from memory. Usual current where the maker
 * states none: 0.5 C for lithium (charging practice: 0.5 to 1 C) and for nickel, 0.3 C for
 * lead-acid (0.1 to 0.3 C), from memory.
 *
 * @param leastVolts of a cell at the end of the charge, the lower end of what is usual
 * @param mostVolts the upper end
 * @param byVolts whether the charger's voltage is what ends the charge
 * @param chargedPerCapacity charge put in, and current tailing off, as a multiple of the capacity
 * @param usualRate current as a share of the capacity per hour
 */
record CellCharge(
    double leastVolts,
    double mostVolts,
    boolean byVolts,
    double chargedPerCapacity,
    double usualRate) {
  /** What a lithium cell may be charged above its volts; also the maker's tolerance of chargers. */
  static final double LITHIUM_TOLERANCE_VOLTS = 0.05;

  /** What other cells, or an unknown number of cells, may be charged above their volts. */
  static final double OTHER_TOLERANCE_SHARE = 0.01;

  /** Slow enough that a nickel cell may be left on the charger overnight: common practice. */
  static final double SLOW_RATE = 0.1;

  /** Charge that a nickel cell gets at 0.1 C for 16 hours, as a multiple of its capacity. */
  static final double MOST_TIMED = 1.6;

  static Optional<CellCharge> of(Said chemistry) {
    return Optional.ofNullable(
        switch (chemistry.or("")) {
          case "li-ion" -> new CellCharge(4.20, 4.20, true, 1.2, 0.5);
          case "lifepo4" -> new CellCharge(3.65, 3.65, true, 1.2, 0.5);
          case "nimh", "nicd" -> new CellCharge(1.40, 1.50, false, 1 / 0.7, 0.5);
          case "lead-acid" -> new CellCharge(2.40, 2.45, true, 1 / 0.7, 0.3);
          default -> null;
        });
  }

  static boolean lithium(Said chemistry) {
    return chemistry.is("li-ion") || chemistry.is("lifepo4");
  }

  static boolean nickel(Said chemistry) {
    return chemistry.is("nimh") || chemistry.is("nicd");
  }

  /** Whether the cells are of a kind that is never charged. */
  static boolean primary(Said chemistry) {
    return chemistry.is("primary-alkaline") || chemistry.is("primary-lithium");
  }
}
