package outshop.figures;

import outshop.units.Exact;

/** The resistors that shops have. */
final class ResistorRow {
  /** IEC 60063:2015, series E24, one decade. */
  private static final int[] E24 = {
    10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91
  };

  /** Usual ratings, in watts. Common practice, no source. */
  private static final double[] RATINGS = {0.125, 0.25, 0.5, 1, 2, 3, 5, 10, 20, 50};

  /** The share of its rating that a resistor is loaded with at most. Common practice, no source. */
  private static final double LOADED = 0.5;

  private ResistorRow() {}

  /**
   * The least value of the E24 series that is no less.
   *
   * @param ohms above zero
   */
  static double nextUp(double ohms) {
    double decade = Math.pow(10, Math.floor(Math.log10(ohms)) - 1);
    for (double scale : new double[] {decade, decade * 10}) {
      for (int value : E24) {
        if (!Exact.below(value * scale, ohms)) {
          return value * scale;
        }
      }
    }
    throw new IllegalArgumentException("no resistance: " + ohms);
  }

  /**
   * The least usual rating, in watts, that leaves half in reserve; twice the heat where none is
   * large enough.
   */
  static double rating(double watts) {
    for (double rating : RATINGS) {
      if (!Exact.above(watts, rating * LOADED)) {
        return rating;
      }
    }
    return watts / LOADED;
  }
}
