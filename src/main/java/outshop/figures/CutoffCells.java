package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Chemistry;
import outshop.circuit.PackValues;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * The number of cells a cut-off is set for, against that of the pack: in cells where the device
 * counts cells, else in volts, which must lie between the pack's lowest and its nominal volts.
 *
 * @param set what it is set to
 * @param least what this pack asks for at least
 * @param most what this pack allows at most
 * @param cells what follows the number where it counts cells; empty where it is in volts
 * @param pack the pack's name
 */
public record CutoffCells(At at, Amount set, Amount least, Amount most, String cells, String pack) {

  /** Whether everything about it is known. */
  public boolean known() {
    return set.isKnown() && least.isKnown() && most.isKnown();
  }

  /** The settings of the pack's own cut-off and of each receiver's, as far as they have one. */
  static List<CutoffCells> all(Bench bench, PackValues pack) {
    List<CutoffCells> all = new ArrayList<>();
    if (pack.pack().amount("cutoff_volts").isKnown()) {
      all.add(inVolts(pack.pack(), pack));
    }
    for (Fitted receiver : bench.plan().parts(Kind.RECEIVER)) {
      Amount cells = receiver.amount("cutoff_cells_count");
      Amount volts = receiver.amount("cutoff_volts");
      boolean byVoltsOnly = cells.isAbsent() || (cells.isMissing() && volts.isKnown());
      boolean open = receiver.isOpen("cutoff_cells_count") || pack.pack().isOpen("chemistry");
      if (!volts.isAbsent() && !open) {
        all.add(
            countsAlike(pack.pack()) && !byVoltsOnly
                ? of(receiver, pack, cells, pack.cells(), pack.cells())
                : inVolts(receiver, pack));
      }
    }
    return all;
  }

  /** A receiver counts lithium cells; the cells of other packs it does not mean. */
  private static boolean countsAlike(Fitted pack) {
    Said chemistry = pack.said("chemistry");
    return !(chemistry instanceof Said.Word word)
        || Chemistry.of(word.word()).orElseThrow().lithium();
  }

  private static CutoffCells inVolts(Fitted part, PackValues pack) {
    return of(part, pack, part.amount("cutoff_volts"), pack.lowestVolts(), pack.nominalVolts());
  }

  private static CutoffCells of(
      Fitted part, PackValues pack, Amount set, Amount least, Amount most) {
    return new CutoffCells(
        Places.of(part),
        set,
        least,
        most,
        set instanceof Amount.Known k && k.unit() == Unit.COUNT ? " cells" : "",
        pack.pack().name());
  }
}
