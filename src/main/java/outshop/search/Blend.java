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

  private Blend() {}

  /** The part for a set of choices, which is the choice itself where there is only one. */
  static Part of(Slot slot, BitSet set, End end, Consumer<String> watcher) {
    List<Part> members = new ArrayList<>();
    set.stream().forEach(i -> members.add(slot.choices().get(i)));
    Part first = members.get(0);
    if (members.size() == 1) {
      return watched(first, watcher);
    }
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
        }
      } else {
        spans.put(name, span(column, members, end));
      }
    }
    return new Part(
        first.kind(),
        "any of " + members.size(),
        numbers,
        words,
        Map.of(),
        first.origin(),
        NOWHERE,
        new Loose(spans, watcher));
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

  private static Loose.Span span(Column column, List<Part> members, End end) {
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
      low = Math.min(low, usual ? column.low() * scale : one);
      high = Math.max(high, usual ? column.high() * scale : one);
      at = end == End.LOW ? Math.min(at, one) : Math.max(at, one);
    }
    return new Loose.Span(low, at, high);
  }
}
