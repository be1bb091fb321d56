package outshop.circuit;

import java.util.List;
import java.util.function.ToDoubleFunction;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * What a fitted pack delivers, from its cells.
 *
 * @param fullVolts straight off the charger, without load
 * @param ohms internal resistance: cells in series x cell resistance / strings in parallel +
 *     protection circuit
 */
public record PackValues(
    Fitted pack,
    Amount cells,
    Amount fullVolts,
    Amount nominalVolts,
    Amount emptyVolts,
    Amount lowestVolts,
    Amount ohms) {

  public static PackValues of(Fitted pack) {
    return pack.derived(PackValues.class, PackValues::workedOut);
  }

  private static PackValues workedOut(Fitted pack) {
    Said chemistry = pack.said("chemistry");
    Amount cells = cells(pack, chemistry);
    Amount empty = perCell(pack, chemistry, cells, "empty", Chemistry::emptyVolts);
    Amount cutoff = pack.amount("cutoff_volts");
    return new PackValues(
        pack,
        cells,
        stated(pack, "full_volts", perCell(pack, chemistry, cells, "full", Chemistry::fullVolts))
            .named(pack.name() + " full"),
        stated(
                pack,
                "nominal_volts",
                perCell(pack, chemistry, cells, "nominal", Chemistry::nominalVolts))
            .named(pack.name() + " nominal"),
        stated(
                pack,
                "empty_volts",
                cutoff.isKnown() && empty.isKnown() && cutoff.get().value() > empty.get().value()
                    ? cutoff
                    : empty)
            .named(pack.name() + " empty"),
        perCell(pack, chemistry, cells, "lowest", Chemistry::lowestVolts),
        ohms(pack, cells));
  }

  private static Amount stated(Fitted pack, String column, Amount otherwise) {
    return pack.amount(column).orElse(otherwise);
  }

  /** The cells in series: as stated, else as many as the stated nominal volts make. */
  private static Amount cells(Fitted pack, Said chemistry) {
    Amount stated = pack.amount("cells_series_count");
    if (stated.isKnown()
        || pack.isOpen("cells_series_count")
        || !(chemistry instanceof Said.Word word)) {
      return stated;
    }
    double nominal = Chemistry.of(word.word()).orElseThrow().nominalVolts();
    Amount fromVolts =
        Amount.computed(
            pack.name() + ": cells in series",
            Unit.COUNT,
            "nominal volts / " + nominal + " V a cell, to the nearest",
            v -> Math.max(1, Math.round(v[0] / nominal)),
            pack.amount("nominal_volts"));
    return fromVolts.isKnown() ? fromVolts : stated;
  }

  private static Amount perCell(
      Fitted pack, Said chemistry, Amount cells, String when, ToDoubleFunction<Chemistry> volts) {
    String label = pack.name() + " " + when;
    if (chemistry instanceof Said.Unsaid unsaid) {
      return new Amount.Missing(List.of(unsaid.want()));
    }
    Chemistry cell = Chemistry.of(chemistry.or("")).orElseThrow();
    Amount each =
        Amount.known(
            volts.applyAsDouble(cell),
            Unit.VOLTS,
            Origin.STANDARD,
            "one " + cell.word() + " cell, " + when,
            "usual volts of its chemistry");
    return Amount.computed(
        label, Unit.VOLTS, "cells x volts a cell", v -> v[0] * v[1], cells, each);
  }

  private static Amount ohms(Fitted pack, Amount cells) {
    Amount strings =
        pack.amount("strings_parallel_count")
            .orElse(
                Amount.assumed(
                    1,
                    1,
                    4,
                    Unit.COUNT,
                    pack.name() + ": strings parallel count",
                    "not stated; one string is the least"));
    Amount cellOhms = pack.amount("cell_milliohms");
    Amount cellsOnly =
        Amount.computed(
            pack.name() + ": cells' resistance",
            Unit.OHMS,
            "cells in series x cell / strings in parallel",
            v -> v[0] * v[1] / v[2],
            cells,
            cellOhms,
            strings);
    boolean unprotected = pack.said("protection").is("no");
    Amount protection =
        unprotected
            ? new Amount.Absent(pack.name() + ": protection")
            : pack.amount("protection_milliohms");
    if (protection.isAbsent()) {
      return cellsOnly.named(pack.name() + ": internal resistance");
    }
    return Amount.sum(
        pack.name() + ": internal resistance", Unit.OHMS, List.of(cellsOnly, protection));
  }

  /** Volts of the pack, without load, in a case. */
  public Amount volts(LoadCase.Charge charge) {
    return switch (charge) {
      case FULL -> fullVolts;
      case NOMINAL -> nominalVolts;
      case EMPTY -> emptyVolts;
    };
  }
}
