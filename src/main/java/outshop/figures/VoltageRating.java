package outshop.figures;

import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * A fuse, switch, connector, cable, jack or plug, and the most volts it must part or hold off.
 *
 * @param fullVolts with the pack full and no load; at a jack or plug the charger's volts where they
 *     are higher
 * @param directVolts its rating for direct voltage
 * @param alternatingVolts its rating for alternating voltage; absent where it has none
 */
public record VoltageRating(At at, Amount fullVolts, Amount directVolts, Amount alternatingVolts) {

  static VoltageRating of(Fitted part, Amount fullVolts) {
    Amount alternating =
        part.is(Kind.PLUG) ? new Amount.Absent(part.name()) : part.amount("ac_volts");
    return new VoltageRating(Places.of(part), fullVolts, part.amount("dc_volts"), alternating);
  }

  /** Whether only a rating for alternating voltage is stated. */
  public boolean alternatingOnly() {
    return directVolts instanceof Amount.Missing direct
        && !direct.open()
        && alternatingVolts.isKnown();
  }

  /** How far the alternating rating alone lets one judge. */
  public String situation() {
    return Feed.below(alternatingVolts, fullVolts) ? "even-that-too-low" : "alternating-only";
  }
}
