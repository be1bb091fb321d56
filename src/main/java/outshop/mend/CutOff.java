package outshop.mend;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.circuit.PackValues;
import outshop.plan.Edit;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Unit;

/** Where a receiver stops: for how many cells, at how many volts. */
record CutOff(double cells, double volts) {

  /** As the plan's pack asks for; empty where that is not known. */
  static Optional<CutOff> ofThePack(Plan plan) {
    List<Fitted> packs = plan.parts(Kind.PACK);
    return packs.isEmpty() ? Optional.empty() : of(packs.get(0));
  }

  static Optional<CutOff> of(Fitted pack) {
    Amount cells = pack.amount("cells_series_count");
    Amount empty = PackValues.of(pack).emptyVolts();
    return cells.isKnown() && empty.isKnown()
        ? Optional.of(new CutOff(cells.get().value(), empty.get().value()))
        : Optional.empty();
  }

  boolean isSetAt(Part receiver) {
    return Double.valueOf(cells).equals(receiver.numbers().get("cutoff_cells_count"))
        && Double.valueOf(volts).equals(receiver.numbers().get("cutoff_volts"));
  }

  Edit edit(String path) {
    return new Edit.Adjust(
        path, Kind.RECEIVER, Map.of("cutoff_cells_count", cells, "cutoff_volts", volts));
  }

  String words() {
    return "its cut-off for "
        + AmountText.number(cells)
        + " cells, "
        + AmountText.text(volts, Unit.VOLTS)
        + " (as far as its instructions allow)";
  }
}
