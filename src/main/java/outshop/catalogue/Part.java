package outshop.catalogue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import outshop.input.Place;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * One part: a row of a kind's table, or a part written in a plan.
 *
 * @param numbers by column, in the column's unit; {@link Double#NaN} where the part is stated to
 *     have none. A column that is not in the map was left blank
 * @param words by column; several words of one cell stand in it with one space between
 * @param notes what stood in columns of the user's own
 * @param origin where the row's values come from
 * @param loose what makes it stand for several parts
 */
public record Part(
    Kind kind,
    String id,
    Map<String, Double> numbers,
    Map<String, String> words,
    Map<String, String> notes,
    Origin origin,
    Place place,
    Loose loose) {

  /** A part that stands for itself alone. */
  public Part(
      Kind kind,
      String id,
      Map<String, Double> numbers,
      Map<String, String> words,
      Map<String, String> notes,
      Origin origin,
      Place place) {
    this(kind, id, numbers, words, notes, origin, place, Loose.NOTHING);
  }

  public Part {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
    notes = Map.copyOf(notes);
  }

  /** As for any two equal ones, without going through every column. */
  @Override
  public int hashCode() {
    return id.hashCode();
  }

  @Override
  public Map<String, Double> numbers() {
    loose.watcher().accept(Loose.ALL);
    return numbers;
  }

  @Override
  public Map<String, String> words() {
    loose.watcher().accept(Loose.ALL);
    return words;
  }

  @Override
  public Origin origin() {
    loose.watcher().accept(Loose.ROW);
    return origin;
  }

  @Override
  public Place place() {
    loose.watcher().accept(Loose.ROW);
    return place;
  }

  /**
   * The number in a column, as far as it is known; a blank one is the column's assumed default
   * where it has one.
   */
  public Amount amount(String columnName) {
    return amount(columnName, id);
  }

  /**
   * As {@link #amount(String)}, for a part that has a name in the plan.
   *
   * @param where the part's name in the plan, used in labels and in what is wanted
   */
  public Amount amount(String columnName, String where) {
    Column column = Columns.require(kind, columnName);
    if (!column.isNumber()) {
      throw new IllegalArgumentException(columnName + " of a " + kind.word() + " is no number");
    }
    loose.watcher().accept(columnName);
    String label = where + ": " + columnName.replace('_', ' ');
    Loose.Span span = loose.spans().get(columnName);
    if (span != null) {
      return span.isOpen()
          ? new Amount.Missing(List.of(new Want(where, columnName, column.how())), true)
          : Amount.assumed(
              span.at(), span.low(), span.high(), column.unit(), label, "of several parts");
    }
    Double value = numbers.get(columnName);
    if (value != null) {
      return value.isNaN()
          ? new Amount.Absent(label)
          : Amount.known(value, column.unit(), origin, label, origin.words() + " of " + id);
    }
    if (column.assumed().isPresent()) {
      double scale = column.scale();
      return Amount.assumed(
          column.assumed().getAsDouble() * scale,
          column.low() * scale,
          column.high() * scale,
          column.unit(),
          label,
          "not stated; usual for a " + kind.word());
    }
    return Amount.missing(where, columnName, column.how());
  }

  /**
   * Whether a cell is blank only because the parts that this one stands for differ in it: each of
   * them may state something else, so what a blank cell would be taken for does not hold.
   */
  public boolean isOpen(String columnName) {
    loose.watcher().accept(columnName);
    Loose.Span span = loose.spans().get(columnName);
    return span != null && span.isOpen();
  }

  /** The word in a column, as far as it is known. */
  public Said said(String columnName) {
    return said(columnName, id);
  }

  /** As {@link #said(String)}, for a part that has a name in the plan. */
  public Said said(String columnName, String where) {
    Column column = Columns.require(kind, columnName);
    if (column.isNumber()) {
      throw new IllegalArgumentException(columnName + " of a " + kind.word() + " is a number");
    }
    loose.watcher().accept(columnName);
    String word = words.get(columnName);
    return word == null
        ? new Said.Unsaid(new Want(where, columnName, column.how()))
        : new Said.Word(word, origin, where + ": " + columnName.replace('_', ' '));
  }

  /** The words of a cell that may hold several; empty if it was left blank. */
  public Set<String> several(String columnName) {
    loose.watcher().accept(columnName);
    String cell = words.get(columnName);
    return cell == null ? Set.of() : new TreeSet<>(List.of(cell.split(" ")));
  }

  /** The unit of a number column of this part's kind. */
  public Unit unit(String columnName) {
    return Columns.require(kind, columnName).unit();
  }

  /** The part's title, or its id where it has none. */
  public String title() {
    return words.getOrDefault("title", id);
  }
}
