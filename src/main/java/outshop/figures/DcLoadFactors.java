package outshop.figures;

/**
 * By how much a switch's nominal current rating must exceed the current of what it switches, in a
 * system of direct current: required rating = load current x factor.
 *
 * <p>Source: US Federal Aviation Administration, Advisory Circular AC 43.13-1B (8 September 1998),
 * chapter 11, Table 11-4, which has a column for 12 V and one for 28 V. A pack between them takes
 * the stricter column; that choice is ours. An aircraft's 12 V system stands at about 14 V (from
 * memory), so packs up to {@link #LOW_SYSTEM_VOLTS} take the lower column.
 */
record DcLoadFactors(double lamp, double inductive, double motor, double resistive) {
  static final DcLoadFactors AT_12_VOLTS = new DcLoadFactors(5, 2, 2, 1);
  static final DcLoadFactors AT_28_VOLTS = new DcLoadFactors(8, 4, 3, 2);

  /** The highest full volts of a pack that still count as a 12 V system. */
  static final double LOW_SYSTEM_VOLTS = 14.5;

  static DcLoadFactors of(double fullVolts) {
    return outshop.units.Exact.above(fullVolts, LOW_SYSTEM_VOLTS) ? AT_28_VOLTS : AT_12_VOLTS;
  }
}
