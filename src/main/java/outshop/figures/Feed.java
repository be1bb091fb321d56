package outshop.figures;

import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Exact;

/**
 * A receiver or decoder and the volts that reach it.
 *
 * @param fullVolts with the pack straight off the charger and no load: the most it ever sees
 * @param nominalSustainedVolts at its terminals, pack at nominal volts, the worse of cruising and
 *     slipping
 * @param emptySustainedVolts the same with the pack nearly empty
 * @param emptyBlockedVolts the same with the wheels blocked
 * @param unusedShare of the pack's charge, left when the part gives up before the pack is empty;
 *     absent where it does not, or where no published curve tells
 */
public record Feed(
    At at,
    Fitted part,
    Amount fullVolts,
    Amount nominalSustainedVolts,
    Amount emptySustainedVolts,
    Amount emptyBlockedVolts,
    Amount unusedShare) {

  public Kind kind() {
    return part.kind();
  }

  public Amount minimumVolts() {
    return part.amount("input_min_volts");
  }

  public Amount maximumVolts() {
    return part.amount("input_max_volts");
  }

  /** Whether it is known to get less than it needs even with the pack at nominal volts. */
  public boolean weakAtNominal() {
    return below(nominalSustainedVolts, minimumVolts());
  }

  /** Whether it is known to get less than it needs once the pack is nearly empty. */
  public boolean weakWhenEmpty() {
    return below(emptySustainedVolts, minimumVolts());
  }

  /** How much of the charge stays unused, in words that fill a sentence. */
  public String unusedWords() {
    return ChargeCurve.words(unusedShare);
  }

  static boolean below(Amount volts, Amount least) {
    return volts instanceof Amount.Known v
        && least instanceof Amount.Known l
        && Exact.below(v.value(), l.value());
  }
}
