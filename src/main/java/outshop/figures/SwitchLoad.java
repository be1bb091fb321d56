package outshop.figures;

import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Said;

/**
 * A switch and the current its busiest contact carries.
 *
 * @param charging whether it is the contact that closes for charging
 * @param motorFactor by how much the rating must exceed a motor's current
 * @param motorRatingAmps current x that factor
 * @param factors the factors for lamps, motors and inductive loads, in words
 */
public record SwitchLoad(
    At at,
    Fitted part,
    boolean charging,
    Amount amps,
    Amount motorFactor,
    Amount motorRatingAmps,
    String factors) {

  /** The rating that leaves a quarter in reserve. */
  public Amount neededAmps() {
    return Demands.withReserve(part.name(), amps);
  }

  /** What it carries and which rating a motor of that current asks for, in words. */
  public String here() {
    return amps instanceof Amount.Known carried && motorRatingAmps instanceof Amount.Known asked
        ? "it carries %s, and a motor asks for %s"
            .formatted(AmountText.text(carried), AmountText.text(asked))
        : "what it carries is not known";
  }

  /** Whether a current for direct voltage is stated. */
  public boolean dcRated() {
    return part.amount("dc_amps").isKnown();
  }

  /** Whether only a current for alternating voltage is stated. */
  public boolean acOnly() {
    return !dcRated() && !part.isOpen("dc_amps") && part.amount("ac_amps").isKnown();
  }

  /** Whether its rating is stated for something harder than a resistive load. */
  public boolean ratedForMore() {
    Said load = part.said("dc_load");
    return !load.isUnsaid() && !load.is("resistive");
  }
}
