package outshop.catalogue;

/**
 * What one cell says, read by the rules of its column. Whether the value is plausible is judged
 * later, by {@link PartChecks}.
 */
public sealed interface Cell {

  /** Nothing stands there: not known. */
  record Blank() implements Cell {}

  /** A number, held in the column's unit. */
  record Quantity(double held, Decimals decimals) implements Cell {}

  /** How a number's decimals were written, which tells how the rest of the file is to be taken. */
  enum Decimals {
    PLAIN,
    COMMA,
    /** {@code 1.500}: would be 1500 if the file wrote a comma for decimals. */
    PERHAPS_THOUSANDS
  }

  /** The word {@code none} in a column that allows it: stated not to exist. */
  record None() implements Cell {}

  /** A text, a word of the column's list, or several with one space between. */
  record Words(String words) implements Cell {}

  /**
   * Something that the column does not allow.
   *
   * @param found the part of the cell that is wrong
   * @param what what is wrong, without a full stop
   * @param expected what would be right
   */
  record Wrong(String found, String what, String expected) implements Cell {}

  /**
   * Reads a cell.
   *
   * @param column the column it stands in
   * @param written the cell's text; spaces around it do not count
   */
  static Cell read(Column column, String written) {
    String text = Blanks.trimmed(written);
    if (text.isEmpty()) {
      return new Blank();
    }
    if (text.length() > CellText.LONGEST) {
      return new Wrong(text, "the cell is too long", "at most " + CellText.LONGEST + " characters");
    }
    if (CellText.isSpreadsheetError(text)) {
      return new Wrong(
          text, "an error value of the spreadsheet", "the value itself" + CellText.OR_BLANK);
    }
    return switch (column.type()) {
      case TEXT -> CellText.text(text);
      case WORD -> CellText.word(column, text);
      case WORDS -> CellText.words(column, text);
      case NUMBER, NUMBER_OR_NONE -> CellNumber.read(column, text, NumberForm.of(text));
    };
  }
}
