package outshop.figures;

import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * A regulator and the volts that reach it.
 *
 * @param fullVolts with the pack straight off the charger and no load: the most it ever sees
 * @param nominalSustainedVolts at its input, pack at nominal volts, the worse of cruising and
 *     slipping
 * @param emptySustainedVolts the same with the pack nearly empty
 * @param neededVolts the greater of its least input volts and its output volts with the drop-out on
 *     top
 */
public record RegulatorFeed(
    At at,
    Fitted part,
    Amount fullVolts,
    Amount nominalSustainedVolts,
    Amount emptySustainedVolts,
    Amount neededVolts) {

  public Amount maximumVolts() {
    return part.amount("input_max_volts");
  }

  /** Whether it is known to lack input volts even with the pack at nominal volts. */
  public boolean weakAtNominal() {
    return Feed.below(nominalSustainedVolts, neededVolts);
  }
}
