package outshop.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Loose;
import outshop.catalogue.Part;
import outshop.input.Place;

/**
 * A part that stands for several: what they share is stated, a number in which they differ is the
 * range of all, a word in which they differ is left blank, and so is a number that only some of
 * them state.
 */
final class Blend {
  private static final Place NOWHERE = Place.whole("several parts");

  /** Which end of a range is shown as if it were the one value. */
  enum End {
    LOW,
    HIGH
  }

  /** What a blank is taken for in a column that has a usual value. */
  enum Usual {
    /** The range in which it may lie, as a check does. */
    RANGE,
    /**
     * The value alone, which is what a check decides by where it does not ask for the range. What
     * differs then differs between the parts.
     */
    VALUE
  }

  private Blend() {}

  /** The part for a set of choices, which is the choice itself where there is only one. */
  static Part of(Slot slot, BitSet set, End end) {
    List<Part> members = new ArrayList<>();
    set.stream().forEach(i -> members.add(slot.choices().get(i)));
    return members.size() == 1 ? members.get(0) : of(members, end, Usual.RANGE);
  }

  /** As {@link #of(Slot, BitSet, End)}, with each usual value taken for itself. */
  static Part withUsualValues(Slot slot, BitSet set, End end) {
    List<Part> members = new ArrayList<>();
    set.stream().forEach(i -> members.add(slot.choices().get(i)));
    return of(members, end, Usual.VALUE);
  }

  /** A part with each usual value taken for itself. */
  static Part withUsualValues(Part part) {
    return of(List.of(part), End.LOW, Usual.VALUE);
  }

  private static Part of(List<Part> members, End end, Usual usual) {
    Part first = members.get(0);
    Map<String, Double> numbers = new HashMap<>();
    Map<String, String> words = new HashMap<>();
    Map<String, Loose.Span> spans = new HashMap<>();
    for (Column column : Columns.of(first.kind())) {
      String name = column.name();
      if (!column.isNumber()) {
        String word = first.words().get(name);
        boolean shared = members.stream().allMatch(p -> Objects.equals(p.words().get(name), word));
        if (!shared) {
          spans.put(name, Loose.Span.OPEN);
        } else if (word != null) {
          words.put(name, word);
        }
      } else if (members.stream()
          .allMatch(p -> Objects.equals(p.numbers().get(name), first.numbers().get(name)))) {
        if (first.numbers().containsKey(name)) {
          numbers.put(name, first.numbers().get(name));
        } else if (usual == Usual.VALUE && column.assumed().isPresent()) {
          spans.put(name, span(column, members, end, usual));
        }
      } else {
        spans.put(name, span(column, members, end, usual));
      }
    }
    boolean one = members.size() == 1;
    return new Part(
        first.kind(),
        one ? first.id() : "any of " + members.size(),
        numbers,
        words,
        Map.of(),
        first.origin(),
        one ? first.place() : NOWHERE,
        new Loose(spans, column -> {}));
  }

  static Part watched(Part part, Consumer<String> watcher) {
    return new Part(
        part.kind(),
        part.id(),
        part.numbers(),
        part.words(),
        part.notes(),
        part.origin(),
        part.place(),
        new Loose(Map.of(), watcher));
  }

  private static Loose.Span span(Column column, List<Part> members, End end, Usual taken) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double at = end == End.LOW ? low : high;
    for (Part member : members) {
      Double value = member.numbers().get(column.name());
      boolean usual = value == null && column.assumed().isPresent();
      if ((value == null && !usual) || (value != null && value.isNaN())) {
        return Loose.Span.OPEN;
      }
      double scale = column.scale();
      double one = usual ? column.assumed().getAsDouble() * scale : value;
      boolean whole = usual && taken == Usual.RANGE;
      low = Math.min(low, whole ? column.low() * scale : one);
      high = Math.max(high, whole ? column.high() * scale : one);
      at = end == End.LOW ? Math.min(at, one) : Math.max(at, one);
    }
    return new Loose.Span(low, at, high);
  }
}
