package outshop.search;

import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Part;
import outshop.units.Amount;
import outshop.units.Want;

/**
 * How long a combination of a cell may run on a charge at most. Where that cannot be told for the
 * cell because only some of its parts state what it takes, they are asked apart from the others.
 */
final class LongestRun {
  private static final int MOST_PARTINGS = 12;
  private static final int PROOFS = 2;

  private final Space space;
  private final Trials trials;

  LongestRun(Space space, Trials trials) {
    this.space = space;
    this.trials = trials;
  }

  /**
   * What stands in a rank.
   *
   * @param unknown 1 where it is unknown for all of the cell, else 0
   * @param negativeHours so that less is better
   */
  record Mark(double unknown, double negativeHours) implements Comparable<Mark> {
    static final Mark UNKNOWN = new Mark(1, 0);
    static final Mark ANY = new Mark(0, Double.NEGATIVE_INFINITY);

    static Mark of(double hours) {
      return new Mark(0, -rounded(hours));
    }

    /** So far that the last bits of a solved figure cannot turn the order. */
    private static double rounded(double hours) {
      return Math.rint(hours * 1e6) / 1e6;
    }

    @Override
    public int compareTo(Mark other) {
      int byUnknown = Double.compare(unknown, other.unknown);
      return byUnknown != 0 ? byUnknown : Double.compare(negativeHours, other.negativeHours);
    }
  }

  /** The best mark that a combination of the cell may have. */
  Mark of(BitSet[] cell) {
    return of(cell, MOST_PARTINGS);
  }

  private Mark of(BitSet[] cell, int partings) {
    Amount hours = trials.hours(cell);
    if (hours instanceof Amount.Known known) {
      return Mark.of(known.high());
    }
    List<Want> wants = hours instanceof Amount.Missing missing ? missing.wants() : List.of();
    for (Want want : wants) {
      Optional<List<BitSet[]>> parted = parted(cell, want);
      if (parted.isPresent()) {
        return partings < parted.get().size()
            ? Mark.ANY
            : best(parted.get(), partings - parted.get().size());
      }
    }
    return isUnknown(cell) ? Mark.UNKNOWN : Mark.ANY;
  }

  private Mark best(List<BitSet[]> cells, int partings) {
    Mark best = Mark.UNKNOWN;
    for (BitSet[] cell : cells) {
      Mark mark = of(cell, partings);
      best = mark.compareTo(best) < 0 ? mark : best;
    }
    return best;
  }

  /** The cell by what its parts say of a column that is wanted; empty if they all say the same. */
  private Optional<List<BitSet[]>> parted(BitSet[] cell, Want want) {
    for (int s = 0; s < cell.length; s++) {
      Slot slot = space.slots().get(s);
      Optional<Column> column = Columns.find(slot.open().kind(), want.what());
      if (slot.name().equals(want.where()) && column.isPresent()) {
        Map<String, BitSet> said = new LinkedHashMap<>();
        for (int i = cell[s].nextSetBit(0); i >= 0; i = cell[s].nextSetBit(i + 1)) {
          said.computeIfAbsent(said(space.part(s, i), column.get()), k -> new BitSet()).set(i);
        }
        int at = s;
        return said.size() < 2
            ? Optional.empty()
            : Optional.of(said.values().stream().map(set -> with(cell, at, set)).toList());
      }
    }
    return Optional.empty();
  }

  /** The word; of a number only whether there is one. */
  private static String said(Part part, Column column) {
    if (!column.isNumber()) {
      return part.words().getOrDefault(column.name(), "");
    }
    Double number = part.numbers().get(column.name());
    return number == null ? "" : number.isNaN() ? "none" : "stated";
  }

  private static BitSet[] with(BitSet[] cell, int slot, BitSet set) {
    BitSet[] changed = cell.clone();
    changed[slot] = set;
    return changed;
  }

  /** Tries some combinations of a cell of which nothing more can be asked. */
  private boolean isUnknown(BitSet[] cell) {
    Random random = new Random(Arrays.hashCode(cell));
    for (int n = 0; n < PROOFS; n++) {
      BitSet[] one = new BitSet[cell.length];
      for (int s = 0; s < one.length; s++) {
        one[s] = new BitSet();
        one[s].set(Explainer.random(cell[s], random));
      }
      if (trials.hours(one) instanceof Amount.Known) {
        return false;
      }
    }
    return true;
  }
}
