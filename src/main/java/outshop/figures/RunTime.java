package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Unit;

/**
 * How long the locomotive runs on one charge.
 *
 * @param at the pack
 * @param meanAmps over the duty that is asked for, or as logged
 * @param hours on one charge
 * @param coldHours the same at 0 degrees Celsius
 * @param askedHours what the plan asks for
 */
public record RunTime(At at, Amount meanAmps, Amount hours, Amount coldHours, Amount askedHours) {

  /** Whether it is known to fall short of what is asked, even when warm. */
  public boolean fallsShort() {
    return hours instanceof Amount.Known h
        && askedHours instanceof Amount.Known a
        && Exact.below(h.value(), a.value());
  }

  /** The range of the hours for a sentence, such as {@code (1.8 h to 2.3 h)}; empty if none. */
  public String range() {
    return hours instanceof Amount.Known h && !Exact.same(h.low(), h.high())
        ? " ("
            + AmountText.text(h.low(), Unit.HOURS)
            + " to "
            + AmountText.text(h.high(), Unit.HOURS)
            + ")"
        : "";
  }
}
