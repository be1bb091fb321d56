package outshop.figures;

import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * A fitted part and the volts that reach it.
 *
 * @param fullVolts with the pack straight off the charger and no load: the most it ever sees
 * @param nominalSustainedVolts at its terminals, pack at nominal volts, the worse of cruising and
 *     slipping
 * @param emptySustainedVolts the same with the pack nearly empty
 * @param emptyBlockedVolts the same with the wheels blocked
 */
public record Feed(
    At at,
    Fitted part,
    Amount fullVolts,
    Amount nominalSustainedVolts,
    Amount emptySustainedVolts,
    Amount emptyBlockedVolts) {

  public Kind kind() {
    return part.kind();
  }
}
