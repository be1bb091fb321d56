package outshop.render.plot;

/**
 * Where a value stands on an axis.
 *
 * @param low the value at {@code from}
 * @param high the value at {@code to}
 * @param logarithmic whether equal ratios, not equal differences, take equal room
 */
record Scale(double low, double high, double from, double to, boolean logarithmic) {
  Scale {
    boolean possible = low < high && from != to && Double.isFinite(high) && Double.isFinite(low);
    if (!possible || (logarithmic && low <= 0)) {
      throw new IllegalArgumentException("no scale from " + low + " to " + high);
    }
  }

  static Scale linear(double low, double high, double from, double to) {
    return new Scale(low, high, from, to, false);
  }

  static Scale logarithmic(double low, double high, double from, double to) {
    return new Scale(low, high, from, to, true);
  }

  /** The place of a value; one beyond an end stands at that end. */
  double at(double value) {
    double held = Math.max(low, Math.min(high, value));
    return from + (to - from) * share(held);
  }

  /** The value at a place. */
  double value(double at) {
    double share = (at - from) / (to - from);
    return logarithmic ? low * Math.pow(high / low, share) : low + (high - low) * share;
  }

  private double share(double value) {
    return logarithmic
        ? Math.log(value / low) / Math.log(high / low)
        : (value - low) / (high - low);
  }
}
