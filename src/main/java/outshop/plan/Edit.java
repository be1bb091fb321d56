package outshop.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;

/**
 * One small change to a plan. It can be made to a plan as read ({@link EditedPlan}) and to the text
 * it was read from ({@link EditedText}); both give the same plan.
 */
public sealed interface Edit {

  /**
   * A word, text or name is stated at a path, whatever stood there.
   *
   * @param path of a key that holds a text, a word, a name or names
   */
  record Say(String path, List<String> texts) implements Edit {
    public Say {
      texts = List.copyOf(texts);
    }
  }

  /**
   * A quantity is stated at a path. It is held as it can be written, to six digits.
   *
   * @param value in the key's unit
   */
  record Measure(String path, double value) implements Edit {}

  /**
   * What stands at a path goes, with everything below it: a key, a part, a name of the user's own,
   * a row of a list.
   */
  record Drop(String path) implements Edit {}

  /**
   * A catalogue part takes the place of what is fitted at a path, or is added there. The columns
   * that the plan gave for the part before it go; what the plan says of the place (bay, how it is
   * held) stays.
   *
   * @param path {@code parts.NAME}, or a key at which a material stands
   */
  record Fit(String path, Part part) implements Edit {}

  /**
   * Columns of a fitted part get other values than its catalogue row has, as a setting does.
   *
   * @param path {@code parts.NAME}
   * @param kind of the part
   * @param numbers by column, held in the column's unit, written to six digits
   */
  record Adjust(String path, Kind kind, Map<String, Double> numbers) implements Edit {
    public Adjust {
      numbers = Map.copyOf(numbers);
    }
  }

  /**
   * One more wire at the end of the list of wires.
   *
   * @param wire the material, where the row names its own
   * @param metres its length, where it is known
   */
  record Wire(String from, String to, Optional<Part> wire, Optional<Double> metres)
      implements Edit {}
}
