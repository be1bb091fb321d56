package outshop.plan;

import java.util.HashMap;
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

  /** The kind whose word a name begins with, the longest such word. */
  static Optional<Kind> kindOf(String name) {
    Optional<Kind> best = Optional.empty();
    for (Kind kind : Kind.values()) {
      boolean longer = best.isEmpty() || kind.word().length() > best.get().word().length();
      if (name.startsWith(kind.word()) && longer) {
        best = Optional.of(kind);
      }
    }
    return best;
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
