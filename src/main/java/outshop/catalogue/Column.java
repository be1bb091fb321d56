package outshop.catalogue;

import java.util.List;
import java.util.OptionalDouble;
import outshop.units.Unit;

/**
 * One column of a kind's table.
 *
 * @param name as in the header; of a number, the last word is the unit
 * @param unit of a number, the unit it is held in ({@link Unit#COUNT} for texts and words)
 * @param scale of a number, {@code held = written x scale}
 * @param low of a number, the least plausible value as written
 * @param high of a number, the greatest plausible value as written
 * @param assumed of a number, the default used where the cell is blank, as written; only for values
 *     that seldom decide
 * @param words of a word, the words allowed
 * @param example a value for an example row
 * @param help what it is, one sentence
 * @param how how to get it, one sentence
 */
public record Column(
    String name,
    Type type,
    Unit unit,
    double scale,
    double low,
    double high,
    OptionalDouble assumed,
    List<String> words,
    String example,
    String help,
    String how) {

  /** What a cell holds. */
  public enum Type {
    TEXT,
    WORD,
    WORDS,
    NUMBER,
    /** A number, or {@code none} where the part is stated not to have it. */
    NUMBER_OR_NONE
  }

  public boolean isNumber() {
    return type == Type.NUMBER || type == Type.NUMBER_OR_NONE;
  }

  /**
   * Of a number, the symbol of the unit it is written in, such as {@code mA}; an empty text for
   * counts, money, texts and words.
   */
  public String symbol() {
    return isNumber() ? Suffix.of(name).symbol() : "";
  }
}
