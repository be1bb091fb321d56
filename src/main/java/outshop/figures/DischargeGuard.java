package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Cases;
import outshop.circuit.Chemistry;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Want;

/**
 * What keeps a pack from being discharged too deep: its own cut-off or a receiver's, whichever is
 * higher.
 *
 * @param nothing whether it is stated that neither cuts off
 * @param cutoffVolts the higher of the cut-offs; missing while one that is not stated could be the
 *     one that counts
 * @param lowestVolts the least the pack may come down to: cells in series x the lowest volts of one
 */
public record DischargeGuard(At at, boolean nothing, Amount cutoffVolts, Amount lowestVolts) {

  /** The lowest volts in words, as the end of a sentence; empty where they are not known. */
  public String atLowest() {
    return lowestVolts instanceof Amount.Known k ? " at " + AmountText.text(k) : "";
  }

  /** The guard of a pack; empty for cells that are not recharged. */
  static Optional<DischargeGuard> of(Bench bench, Fitted pack) {
    Said chemistry = pack.said("chemistry");
    boolean primary =
        chemistry instanceof Said.Word word
            && !Chemistry.of(word.word()).orElseThrow().rechargeable();
    if (primary) {
      return Optional.empty();
    }
    List<Amount> all = new ArrayList<>(List.of(pack.amount("cutoff_volts")));
    bench.plan().parts(Kind.RECEIVER).forEach(r -> all.add(r.amount("cutoff_volts")));
    boolean nothing = chemistry instanceof Said.Word && all.stream().allMatch(Amount::isAbsent);
    Amount lowest = PackValues.of(pack).lowestVolts();
    return Optional.of(new DischargeGuard(Places.of(pack), nothing, highest(all, lowest), lowest));
  }

  private static Amount highest(List<Amount> all, Amount lowest) {
    List<Amount> known = all.stream().filter(Amount::isKnown).toList();
    Amount best =
        known.isEmpty() ? new Amount.Absent("low-voltage cut-off") : Cases.greatest(known);
    boolean enough =
        best instanceof Amount.Known b
            && lowest instanceof Amount.Known l
            && !Exact.below(b.value(), l.high());
    TreeSet<Want> wants = new TreeSet<>();
    for (Amount amount : all) {
      if (amount instanceof Amount.Missing missing) {
        wants.addAll(missing.wants());
      }
    }
    return enough || wants.isEmpty() ? best : new Amount.Missing(List.copyOf(wants));
  }
}
