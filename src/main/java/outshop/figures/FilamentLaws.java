package outshop.figures;

/**
 * How a filament lamp behaves at another voltage than its own, as powers of {@code x} = volts /
 * rated volts.
 *
 * <p>Source: D. G. Fink, H. W. Beaty (eds.), Standard Handbook for Electrical Engineers, 11th ed.,
 * McGraw-Hill 1978, p. 22-8 (read second-hand): current x^0.55, light x^3.4 to x^3.5, life x^-12 to
 * x^-16. The powers hold near the rated voltage; far from it they only tell the direction.
 */
final class FilamentLaws {
  /** Current against volts. */
  static final double CURRENT = 0.55;

  /** Light against volts; the handbook gives 3.4 to 3.5. */
  static final double LIGHT = 3.4;

  /** Life against volts, of lamps that mind it least. */
  static final double LIFE_MILD = -12;

  /** Life against volts, of lamps that mind it most. */
  static final double LIFE_HARSH = -16;

  private FilamentLaws() {}

  /**
   * A property at other than rated volts, as a share of its rated value.
   *
   * @param voltsShare volts / rated volts
   * @param exponent of the property, one of this class's
   */
  static double share(double voltsShare, double exponent) {
    return Math.pow(voltsShare, exponent);
  }

  /** The least its life can be, as a share of the rated life. */
  static double leastLife(double voltsShare) {
    return Math.min(share(voltsShare, LIFE_MILD), share(voltsShare, LIFE_HARSH));
  }

  /** The most its life can be, as a share of the rated life. */
  static double mostLife(double voltsShare) {
    return Math.max(share(voltsShare, LIFE_MILD), share(voltsShare, LIFE_HARSH));
  }

  /**
   * Volts / rated volts of a filament through which a current is forced, from the current's share.
   */
  static double voltsShare(double currentShare) {
    return Math.pow(currentShare, 1 / CURRENT);
  }
}
