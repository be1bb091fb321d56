package outshop.render.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import outshop.units.Exact;

/** Round numbers for an axis: 1, 2 or 5 times a power of ten apart. */
final class Ticks {
  private static final int[] STEPS = {1, 2, 5};

  /** Up to this many decades a logarithmic axis is marked at 1, 2 and 5, else at 1 alone. */
  private static final double FEW_DECADES = 2.6;

  private Ticks() {}

  /**
   * The multiples of a round step from {@code low} to {@code high}, both ends included; the step is
   * the smallest that gives no more than {@code most} of them. Errors: {@link
   * IllegalArgumentException} unless low lies below high and at least two are allowed.
   */
  static List<Double> linear(double low, double high, int most) {
    if (!(low < high) || most < 2) {
      throw new IllegalArgumentException("no axis from " + low + " to " + high + ", " + most);
    }
    int power = (int) Math.floor(Math.log10((high - low) / most)) - 1;
    for (; ; power++) {
      for (int step : STEPS) {
        List<Double> ticks =
            multiples(BigDecimal.valueOf(step).scaleByPowerOfTen(power), low, high);
        if (ticks.size() <= most) {
          return ticks;
        }
      }
    }
  }

  private static List<Double> multiples(BigDecimal step, double low, double high) {
    List<Double> ticks = new ArrayList<>();
    BigDecimal tick = BigDecimal.valueOf(low).divide(step, 0, RoundingMode.FLOOR).multiply(step);
    for (; !Exact.above(tick.doubleValue(), high); tick = tick.add(step)) {
      if (!Exact.below(tick.doubleValue(), low)) {
        ticks.add(tick.doubleValue());
      }
    }
    return ticks;
  }

  /**
   * Powers of ten from {@code low} to {@code high}, with twice and five times them where the axis
   * is short. Errors: {@link IllegalArgumentException} unless 0 is below low and low below high.
   */
  static List<Double> logarithmic(double low, double high) {
    if (!(0 < low && low < high)) {
      throw new IllegalArgumentException("no logarithmic axis from " + low + " to " + high);
    }
    boolean few = Math.log10(high / low) < FEW_DECADES;
    List<Double> ticks = new ArrayList<>();
    int last = (int) Math.ceil(Math.log10(high));
    for (int power = (int) Math.floor(Math.log10(low)); power <= last; power++) {
      for (int step : STEPS) {
        double tick = BigDecimal.valueOf(step).scaleByPowerOfTen(power).doubleValue();
        boolean within = !Exact.below(tick, low) && !Exact.above(tick, high);
        if (within && (step == 1 || few)) {
          ticks.add(tick);
        }
      }
    }
    return ticks;
  }
}
