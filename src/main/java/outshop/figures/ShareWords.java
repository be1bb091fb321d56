package outshop.figures;

import outshop.units.AmountText;

/** Shares as they fill a sentence: to a tenth of a per cent, and no strings of noughts. */
final class ShareWords {
  private static final double SMALL = 0.01;

  private ShareWords() {}

  /** One share, such as {@code 29.7 %}. */
  static String of(double share) {
    return share < SMALL ? "less than 1 %" : AmountText.percent(rounded(share));
  }

  /** A range of shares, such as {@code 21.7 % to 31.8 %}. */
  static String between(double low, double high) {
    return high < SMALL ? of(high) : AmountText.percent(rounded(low)) + " to " + of(high);
  }

  private static double rounded(double share) {
    return Math.rint(share * 1000) / 1000;
  }
}
