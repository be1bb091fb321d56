package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Unit;

/**
 * A lamp of the locomotive, what kind it is said to be, and what an ohmmeter read on it.
 *
 * @param known whether its kind is known: {@code fine}, {@code reads-as-filament}, {@code
 *     reads-as-led} or unknown
 * @param fits whether the readings fit the kind that is stated: {@code fine}, {@code diode}, {@code
 *     filament}, {@code open} or unknown; the same as {@code known} where no kind is stated
 * @param kindStated whether the plan states a kind
 * @param kind as stated, in words that fill a sentence
 * @param reading both readings, in words that fill a sentence
 * @param benchAmps what it draws in the moment a 7 V bench supply is switched on; absent for what
 *     is no filament
 */
public record LampReading(
    At at,
    Standing known,
    Standing fits,
    boolean kindStated,
    String kind,
    String reading,
    Amount benchAmps) {

  /** What it draws in that moment, in words that fill a sentence; empty for what is no filament. */
  public String benchWords() {
    return benchAmps instanceof Amount.Known known
        ? "; cold it draws "
            + AmountText.text(known)
            + " at "
            + AmountText.text(Readings.BENCH_VOLTS, Unit.VOLTS)
        : "";
  }
}
