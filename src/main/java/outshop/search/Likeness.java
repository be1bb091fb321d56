package outshop.search;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Loose;
import outshop.catalogue.Part;
import outshop.input.Problem;
import outshop.units.Origin;

/** In what the choices of each place are alike. */
final class Likeness {
  private final Space space;
  private final Map<String, String> remarks = new HashMap<>();

  Likeness(Space space) {
    this.space = space;
    for (Problem problem : space.problems()) {
      String row = problem.place().file() + ":" + problem.place().line();
      remarks.merge(row, problem.what(), (a, b) -> a + "; " + b);
    }
  }

  /** Those of a set that are like one choice in some columns. */
  BitSet like(int slot, int choice, Iterable<String> columns, BitSet among) {
    return like(slot, choice, columns, among, this::value);
  }

  /**
   * As {@link #like}, but two numbers need not be the same to be alike; a blank is like a blank.
   */
  BitSet roughlyLike(int slot, int choice, Iterable<String> columns, BitSet among) {
    return like(slot, choice, columns, among, this::form);
  }

  private BitSet like(
      int slot,
      int choice,
      Iterable<String> columns,
      BitSet among,
      BiFunction<Part, String, Object> seenAs) {
    BitSet like = new BitSet();
    Part one = space.part(slot, choice);
    for (int i = among.nextSetBit(0); i >= 0; i = among.nextSetBit(i + 1)) {
      Part other = space.part(slot, i);
      boolean same = true;
      for (String column : columns) {
        same = same && Objects.equals(seenAs.apply(one, column), seenAs.apply(other, column));
      }
      like.set(i, same);
    }
    return like;
  }

  /** The columns in which the choices of a set differ. */
  TreeSet<String> differing(int slot, BitSet set) {
    TreeSet<String> differing = new TreeSet<>();
    Part first = space.part(slot, set.nextSetBit(0));
    for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
      Part other = space.part(slot, i);
      for (Column column : Columns.of(first.kind())) {
        if (!Objects.equals(value(first, column.name()), value(other, column.name()))) {
          differing.add(column.name());
        }
      }
      if (!Objects.equals(value(first, Loose.ROW), value(other, Loose.ROW))) {
        differing.add(Loose.ROW);
      }
    }
    return differing;
  }

  /** The choices of a set by their number in a column, in rising order; without the unstated. */
  TreeMap<Double, BitSet> byNumber(int slot, String column, BitSet set) {
    TreeMap<Double, BitSet> byNumber = new TreeMap<>();
    for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
      Double number = space.part(slot, i).numbers().get(column);
      if (number != null && !number.isNaN()) {
        byNumber.computeIfAbsent(number, n -> new BitSet()).set(i);
      }
    }
    return byNumber;
  }

  private Object value(Part part, String column) {
    if (column.equals(Loose.ROW)) {
      String row = part.place().file() + ":" + part.place().line();
      return List.of(part.origin() == Origin.GUESS, remarks.getOrDefault(row, ""));
    }
    Double number = part.numbers().get(column);
    return number != null ? number : part.words().get(column);
  }

  private Object form(Part part, String column) {
    Double number = part.numbers().get(column);
    return number == null ? value(part, column) : (Object) number.isNaN();
  }
}
