package outshop.figures;

import outshop.circuit.PackValues;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * How much charge a lithium-ion cell still holds at a voltage without load.
 *
 * <p>Source: M. Chen, G. A. Rincon-Mora, "Accurate electrical battery model capable of predicting
 * runtime and I-V performance", IEEE Transactions on Energy Conversion, vol. 21, no. 2, June 2006,
 * pp. 504-511: {@code V = -1.031 exp(-35 s) + 3.685 + 0.2156 s - 0.1178 s^2 + 0.3201 s^3} with the
 * share of charge {@code s} from 0 to 1, measured on one polymer cell (coefficients read
 * second-hand, in a public implementation of that model). Other cells differ; so the result is an
 * estimate and carries the range that {@link #SPREAD_VOLTS} opens. For other chemistries no curve
 * is at hand, and the share stays untold.
 */
final class ChargeCurve {
  /** By how much another cell's curve may lie off this one, in volts: an assumption, no source. */
  static final double SPREAD_VOLTS = 0.15;

  private static final int HALVINGS = 60;

  private ChargeCurve() {}

  /** Volts of one cell without load that holds a share of its charge, 0 to 1. */
  static double volts(double share) {
    return -1.031 * Math.exp(-35 * share)
        + 3.685
        + share * (0.2156 + share * (-0.1178 + share * 0.3201));
  }

  /** The share of its charge, 0 to 1, that a cell of these volts without load still holds. */
  static double share(double volts) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (volts(middle) < volts) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * The share of its charge that a pack still holds when a part gives up before the pack is empty.
   *
   * @param volts at the part with the pack nearly empty
   * @param least the part needs
   * @return absent where the part does not give up before, or no curve is at hand for the chemistry
   */
  static Amount unused(PackValues pack, Amount volts, Amount least) {
    String label = pack.pack().name() + ": charge left unused";
    if (!Feed.below(volts, least) || !pack.pack().said("chemistry").is("li-ion")) {
      return new Amount.Absent(label);
    }
    Amount spread =
        Amount.assumed(
            0,
            -SPREAD_VOLTS,
            SPREAD_VOLTS,
            Unit.VOLTS,
            pack.pack().name() + ": cell off the published curve",
            "estimate; the curve was measured on one polymer cell");
    return Amount.computed(
        label,
        Unit.SHARE,
        "charge between empty and where the part gives up, by a published curve of one cell",
        v -> {
          double empty = v[2] / v[3];
          return Math.max(0, share(empty + (v[1] - v[0]) / v[3] + v[4]) - share(empty));
        },
        volts,
        least,
        pack.emptyVolts(),
        pack.cells(),
        spread);
  }

  /** The share as it fills a sentence. */
  static String words(Amount share) {
    return share instanceof Amount.Known known
        ? ShareWords.between(known.low(), known.high())
        : "an unknown part";
  }
}
