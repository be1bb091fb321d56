package outshop.units;

/**
 * The one comparison policy of the project: two values closer than one part in 10⁹ count as equal,
 * and a value equal to its limit passes. So 14.4 is not above 12 × 1.2, although the binary product
 * is 14.399999999999999. Solved voltages and currents are good to about one part in 10¹², so the
 * policy is coarser than any rounding and finer than any measurement.
 */
public final class Exact {
  /** Relative width within which two values count as the same. */
  public static final double SAME_WITHIN = 1e-9;

  private Exact() {}

  /** Whether {@code a} stands above {@code b} by more than rounding. Both in the same unit. */
  public static boolean above(double a, double b) {
    if (Double.isInfinite(a) || Double.isInfinite(b)) {
      return a > b;
    }
    return a - b > slack(a, b);
  }

  /** Whether {@code a} stands below {@code b} by more than rounding. Both in the same unit. */
  public static boolean below(double a, double b) {
    return above(b, a);
  }

  /** Whether the two count as the same value; a value that is no number is the same as nothing. */
  public static boolean same(double a, double b) {
    boolean finite = Double.isFinite(a) && Double.isFinite(b);
    return a == b || (finite && Math.abs(a - b) <= slack(a, b));
  }

  private static double slack(double a, double b) {
    return SAME_WITHIN * Math.max(Math.abs(a), Math.abs(b));
  }
}
