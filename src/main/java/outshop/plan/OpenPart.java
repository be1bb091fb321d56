package outshop.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.Origin;

/**
 * A place for a part that the plan leaves open: {@code any} part of its kind will do.
 *
 * @param name what the part will be called; for a material, its key
 * @param numbers what the plan states of it, whichever part it will be
 * @param words likewise
 * @param origin where the plan says its values come from, if it does
 * @param place where {@code any} stands in the plan
 */
public record OpenPart(
    String name,
    Kind kind,
    Map<String, Double> numbers,
    Map<String, String> words,
    Optional<Origin> origin,
    Place place) {
  /** What stands in a plan instead of an id. */
  public static final String ANY = "any";

  public OpenPart {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
  }

  /**
   * The kind that a name speaks of: {@code receiver}, {@code speaker-left}. Nothing where it speaks
   * of none or of several ({@code pack-plug}).
   */
  static Optional<Kind> kindOf(String name) {
    List<Kind> named = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      if (("-" + name + "-").contains("-" + kind.word() + "-")) {
        named.add(kind);
      }
    }
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }

  /** A catalogue part as the plan would hold it in this place. */
  public Part filledWith(Part part) {
    if (numbers.isEmpty() && words.isEmpty()) {
      return part;
    }
    Map<String, Double> bothNumbers = new HashMap<>(part.numbers());
    bothNumbers.putAll(numbers);
    Map<String, String> bothWords = new HashMap<>(part.words());
    bothWords.putAll(words);
    return new Part(
        part.kind(),
        part.id(),
        bothNumbers,
        bothWords,
        part.notes(),
        origin.orElse(part.origin()),
        place);
  }
}
