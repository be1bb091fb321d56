package outshop.catalogue;

import java.io.StringReader;
import tools.jackson.core.FormatSchema;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvSchema;

/** The rows of a CSV text, one at a time, each cell with its place. */
final class Rows implements AutoCloseable {
  /** A wider table is refused. */
  static final int MOST_CELLS = 500;

  /** A quote that is not closed, or is closed too early. */
  static final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    private final int line;
    private final int column;
    private final boolean open;

    Broken(int line, int column, boolean open) {
      this.line = line;
      this.column = column;
      this.open = open;
    }

    int line() {
      return line;
    }

    int column() {
      return column;
    }

    /** Whether the quote was never closed. */
    boolean isOpen() {
      return open;
    }
  }

  /** Holds settings only; building it takes longer than reading a table. */
  private static final CsvFactory FACTORY = new CsvFactory();

  private final JsonParser parser;
  private final int linesBefore;
  private final String[] cells = new String[MOST_CELLS + 1];
  private final int[] lines = new int[MOST_CELLS + 1];
  private final int[] columns = new int[MOST_CELLS + 1];
  private int size;
  private int number;

  /**
   * @param linesBefore how many lines of the file stand before the text
   */
  Rows(String text, char separator, int linesBefore) {
    CsvSchema schema = CsvSchema.emptySchema().withColumnSeparator(separator);
    this.parser =
        FACTORY.createParser(
            new ObjectReadContext.Base() {
              @Override
              public FormatSchema getSchema() {
                return schema;
              }
            },
            new StringReader(text));
    this.linesBefore = linesBefore;
  }

  /** Goes to the next row. */
  boolean next() throws Broken {
    try {
      size = 0;
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.END_ARRAY) {
          number++;
          return true;
        }
        if (token == JsonToken.VALUE_STRING) {
          add(Blanks.trimmed(parser.getString()), parser.currentTokenLocation());
        }
      }
      return false;
    } catch (JacksonException e) {
      throw broken(e);
    }
  }

  /** Beyond the widest table only the first cell that is not blank is kept, as the last one. */
  private void add(String cell, TokenStreamLocation location) {
    int at = Math.min(size, MOST_CELLS);
    if (at == size || cells[at].isEmpty()) {
      cells[at] = cell;
      lines[at] = location.getLineNr() + linesBefore;
      columns[at] = location.getColumnNr();
    }
    size++;
  }

  private Broken broken(JacksonException e) {
    boolean open = e.getOriginalMessage().startsWith("Missing closing quote");
    TokenStreamLocation at = open ? parser.currentTokenLocation() : e.getLocation();
    return new Broken(
        at.getLineNr() + linesBefore, open ? at.getColumnNr() : at.getColumnNr() - 1, open);
  }

  /** The number of the row as a spreadsheet counts, from 1; blank rows count. */
  int number() {
    return number;
  }

  /** How many cells the row has, at most one more than are kept. */
  int size() {
    return Math.min(size, MOST_CELLS + 1);
  }

  /** A trimmed cell; an empty text where the row is shorter. */
  String cell(int index) {
    return index < size ? cells[index] : "";
  }

  int line(int index) {
    return lines[index];
  }

  int column(int index) {
    return columns[index];
  }

  boolean isBlank() {
    return firstFilled(0) < 0;
  }

  /** The first cell from there on that is not blank, or -1. */
  int firstFilled(int from) {
    for (int i = from; i < size(); i++) {
      if (!cells[i].isEmpty()) {
        return i;
      }
    }
    return -1;
  }

  @Override
  public void close() {
    parser.close();
  }
}
