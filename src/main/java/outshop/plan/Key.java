package outshop.plan;

import java.util.List;
import java.util.Optional;
import outshop.units.Unit;

/**
 * One key a plan may hold.
 *
 * @param path with points between its parts; {@code *} stands for a name of the user's own
 * @param unit of a quantity; {@link Unit#COUNT} otherwise
 * @param low of a quantity or count, the least plausible value, in {@code unit}
 * @param high of a quantity or count, the greatest plausible value, in {@code unit}
 * @param assumed of a quantity, the default used where the key is left out, with its range
 * @param words of a word, the words allowed
 * @param example as it would be written
 * @param help what it is
 * @param how how to get it
 */
public record Key(
    String path,
    Type type,
    Unit unit,
    double low,
    double high,
    Optional<Assumed> assumed,
    List<String> words,
    String example,
    String help,
    String how) {

  /** What may stand at a key. */
  public enum Type {
    TEXT,
    WORD,
    QUANTITY,
    /** A quantity, or {@code none} where a reading shows open or the thing is not there. */
    QUANTITY_OR_NONE,
    COUNT,
    /** A name of a part, terminal or bay. */
    NAME,
    /** A list of names; {@code [none]} states that there are none. */
    NAMES,
    /**
     * A catalogue id, or a map that holds {@code part:}, or {@code kind:} with the part's own
     * columns.
     */
    PART,
    /** A list of maps; the keys of the maps follow with this path before theirs. */
    ROWS
  }

  /** A default in the key's unit, with the range it is carried as. */
  public record Assumed(double value, double low, double high) {}

  /** The last part of the path. */
  public String name() {
    return path.substring(path.lastIndexOf('.') + 1);
  }
}
