package outshop.units;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Evaluates a formula at the ends of its inputs' ranges. */
final class Ranges {
  /**
   * Above this many assumed inputs their ends are moved together, low with low, instead of in every
   * combination.
   */
  private static final int MOST_COMBINED = 6;

  private Ranges() {}

  static Amount.Known apply(
      String label,
      Unit unit,
      String how,
      ToDoubleFunction<double[]> formula,
      List<Amount.Known> inputs) {
    double[] values = new double[inputs.size()];
    Origin origin = Origin.STANDARD;
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      Amount.Known input = inputs.get(i);
      values[i] = input.middle();
      origin = origin.and(input.origin());
      if (input.low() != input.high()) {
        open.add(i);
      }
    }
    double value = formula.applyAsDouble(values);
    double low = value;
    double high = value;
    boolean together = open.size() > MOST_COMBINED;
    int combinations = open.isEmpty() ? 0 : together ? 2 : 1 << open.size();
    for (int c = 0; c < combinations; c++) {
      double[] ends = values.clone();
      for (int k = 0; k < open.size(); k++) {
        Amount.Known input = inputs.get(open.get(k));
        boolean atHigh = together ? c == 1 : (c & (1 << k)) != 0;
        ends[open.get(k)] = atHigh ? input.high() : input.low();
      }
      double end = formula.applyAsDouble(ends);
      low = Math.min(low, end);
      high = Math.max(high, end);
    }
    return new Amount.Known(value, low, high, unit, origin, label, how, inputs);
  }
}
