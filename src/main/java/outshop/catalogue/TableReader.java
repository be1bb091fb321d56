package outshop.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.units.Origin;

/** Reads the text of one table into parts. */
final class TableReader {
  static final int MOST_ROWS = 200_000;

  /** An id as it stands in a row, whether or not the row was any good. */
  record IdAt(String id, String file, int line, int column, int row) {
    Place place() {
      return new Place(file, line, column, "row " + row + ", column id of " + id);
    }
  }

  private final Kind kind;
  private final String file;
  private final ProblemLog log;
  private final List<Part> parts = new ArrayList<>();
  private final List<IdAt> ids = new ArrayList<>();
  private final ProblemLog perhapsThousands;

  private Header header = new Header(List.of(), -1);
  private boolean hasDecimalCommas;
  private int withoutOrigin;

  TableReader(Kind kind, String file, ProblemLog log) {
    this.kind = kind;
    this.file = file;
    this.log = log;
    this.perhapsThousands = new ProblemLog(file);
  }

  List<Part> parts() {
    return parts;
  }

  List<IdAt> ids() {
    return ids;
  }

  void read(String text) {
    int mark = Separator.markLength(text);
    String table = text.substring(mark);
    char separator = mark > 0 ? text.charAt(4) : Separator.of(kind, table);
    boolean usable = separator == ',' || separator == ';' || separator == '\t';
    if (!usable) {
      log.add(
          Problem.error(
              new Place(file, 1, 5, ""),
              String.valueOf(separator),
              "a separator that is not possible here",
              "a comma, a semicolon or a tab"));
      return;
    }
    try (Rows rows = new Rows(table, separator, mark > 0 ? 1 : 0)) {
      table(rows);
    } catch (Rows.Broken broken) {
      log.add(broken(broken));
    }
    wholeFile();
  }

  private void table(Rows rows) throws Rows.Broken {
    boolean found = rows.next();
    while (found && rows.isBlank()) {
      found = rows.next();
    }
    if (!found) {
      log.add(
          Problem.error(
              Place.whole(file),
              "",
              "the file is empty",
              "a header of column names, one of them id"));
      return;
    }
    if (rows.size() > Rows.MOST_CELLS) {
      log.add(
          Problem.error(
              new Place(file, rows.line(0), 0, "row " + rows.number()),
              "",
              "the table is too wide",
              "at most " + Rows.MOST_CELLS + " columns"));
      return;
    }
    header = Header.read(kind, file, rows, log);
    if (header.idAt() >= 0) {
      rows(rows);
    }
  }

  private void rows(Rows rows) throws Rows.Broken {
    int count = 0;
    while (rows.next()) {
      if (rows.isBlank()) {
        continue;
      }
      if (++count > MOST_ROWS) {
        log.add(
            Problem.error(
                new Place(file, rows.line(0), 0, "row " + rows.number()),
                "",
                "the table is too long",
                "at most " + MOST_ROWS + " rows"));
        return;
      }
      String id = rows.cell(header.idAt());
      if (!id.startsWith("#") || CellText.isSpreadsheetError(id)) {
        new Row(rows, id).read();
      }
    }
  }

  private Problem broken(Rows.Broken broken) {
    Place place = new Place(file, broken.line(), broken.column(), "");
    return broken.isOpen()
        ? Problem.error(
            place,
            "",
            "a quote opens here and is never closed",
            "a quote at the end of the cell too")
        : Problem.error(
            place,
            "",
            "a cell goes on after its closing quote",
            "a separator after the quote; a quote inside a quoted cell is written twice");
  }

  /** What can only be said when the last row is read. */
  private void wholeFile() {
    if (hasDecimalCommas) {
      log.addAll(perhapsThousands);
    }
    if (withoutOrigin > 0) {
      String what =
          withoutOrigin
              + (withoutOrigin == 1
                  ? " part states no origin and so counts as a guess"
                  : " parts state no origin and so count as guesses");
      log.add(
          new Problem(
              Problem.Severity.NOTE,
              Place.whole(file),
              "",
              what,
              "data-sheet, measured or guess in the column origin"));
    }
  }

  /** One row that is neither blank nor a help line. */
  private final class Row implements PartChecks.Written {
    private final Rows rows;
    private final String id;
    private final boolean idIsGood;
    private boolean originIsWrong;
    private final Map<String, Double> numbers = new HashMap<>();
    private final Map<String, String> words = new HashMap<>();
    private final Map<String, String> notes = new HashMap<>();

    Row(Rows rows, String id) {
      this.rows = rows;
      this.id = id;
      this.idIsGood = CellText.isFreeWord(id);
    }

    void read() {
      readId();
      int surplus = rows.firstFilled(header.size());
      if (surplus >= 0) {
        log.add(
            Problem.error(
                at(surplus, ""),
                rows.cell(surplus),
                "the row has more cells than the header",
                "one cell under each heading; a text or number with a separator in it needs quotes"));
        return;
      }
      int last = Math.min(rows.size(), header.size());
      for (int i = 0; i < last; i++) {
        if (i != header.idAt() && !rows.cell(i).isEmpty()) {
          cell(i);
        }
      }
      log.addAll(PartChecks.check(kind, numbers, words, this));
      if (idIsGood) {
        parts.add(new Part(kind, id, numbers, words, notes, origin(), rowPlace()));
      }
    }

    private void readId() {
      int at = header.idAt();
      if (id.isEmpty()) {
        log.add(
            Problem.error(
                rowPlace(), "", "the row has no id", "a short name such as " + kind.word() + "-1"));
      } else if (idIsGood) {
        ids.add(new IdAt(id, file, rows.line(at), rows.column(at), rows.number()));
      } else {
        log.add(
            Problem.error(
                at(at, "id"),
                id,
                "not an id",
                "lower-case letters, digits and hyphens, at most 60, such as " + likeId()));
      }
    }

    /** The id with everything that is not allowed made a hyphen. */
    private String likeId() {
      StringBuilder like = new StringBuilder();
      String low = id.toLowerCase(Locale.ROOT);
      for (int i = 0; i < low.length() && like.length() < 60; i++) {
        char c = low.charAt(i);
        if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
          like.append(c);
        } else if (like.length() > 0 && like.charAt(like.length() - 1) != '-') {
          like.append('-');
        }
      }
      while (like.length() > 0 && like.charAt(like.length() - 1) == '-') {
        like.setLength(like.length() - 1);
      }
      boolean useless = like.length() == 0 || CellText.isSpreadsheetError(id);
      return useless ? kind.word() + "-1" : like.toString();
    }

    private void cell(int index) {
      Heading heading = header.at(index);
      if (heading instanceof Heading.Known known) {
        known(known.column(), index);
      } else if (heading instanceof Heading.Own own) {
        note(own.name(), index);
      } else if (heading instanceof Heading.None) {
        log.add(
            Problem.error(
                at(index, ""),
                rows.cell(index),
                "a value stands under no heading",
                "a name at the head of its column"));
      }
    }

    private void note(String name, int index) {
      Cell cell = CellText.text(rows.cell(index));
      if (cell instanceof Cell.Words w) {
        notes.put(name, w.words());
      } else if (cell instanceof Cell.Wrong wrong) {
        wrong(wrong, index, name);
      }
    }

    private void known(Column column, int index) {
      Cell cell = Cell.read(column, rows.cell(index));
      if (cell instanceof Cell.Quantity number) {
        numbers.put(column.name(), number.held());
        decimals(number.decimals(), column, index);
      } else if (cell instanceof Cell.Words w) {
        words.put(column.name(), w.words());
      } else if (cell instanceof Cell.None) {
        numbers.put(column.name(), Double.NaN);
      } else if (cell instanceof Cell.Wrong wrong) {
        wrong(wrong, index, column.name());
      }
    }

    private void wrong(Cell.Wrong wrong, int index, String name) {
      originIsWrong |= name.equals("origin");
      log.add(Problem.error(at(index, name), wrong.found(), wrong.what(), wrong.expected()));
    }

    private void decimals(Cell.Decimals decimals, Column column, int index) {
      if (decimals == Cell.Decimals.COMMA) {
        hasDecimalCommas = true;
      } else if (decimals == Cell.Decimals.PERHAPS_THOUSANDS) {
        String text = rows.cell(index);
        perhapsThousands.add(
            Problem.error(
                at(index, column.name()),
                text,
                "a point that may part decimals or thousands, as other cells write a comma for"
                    + " decimals",
                NumberForm.eitherForm(NumberForm.of(text).digits())
                    + ", with nothing between thousands"));
      }
    }

    private Origin origin() {
      String word = words.getOrDefault("origin", "");
      if (word.isEmpty() && !originIsWrong) {
        withoutOrigin++;
      }
      return switch (word) {
        case "data-sheet" -> Origin.DATA_SHEET;
        case "measured" -> Origin.MEASURED;
        default -> Origin.GUESS;
      };
    }

    private Place rowPlace() {
      StringBuilder path = new StringBuilder(40).append("row ").append(rows.number());
      if (idIsGood) {
        path.append(" of ").append(id);
      }
      return new Place(file, rows.line(0), 0, path.toString());
    }

    private Place at(int index, String columnName) {
      String column = columnName.isEmpty() ? "" : ", column " + columnName;
      String path = "row " + rows.number() + column + ofId();
      return new Place(file, rows.line(index), rows.column(index), path);
    }

    private String ofId() {
      return idIsGood ? " of " + id : "";
    }

    @Override
    public Place place(String columnName) {
      return at(indexOf(columnName), columnName);
    }

    @Override
    public String text(String columnName) {
      return rows.cell(indexOf(columnName));
    }

    private int indexOf(String columnName) {
      for (int i = 0; i < header.size(); i++) {
        if (header.at(i).shown().equals(columnName)) {
          return i;
        }
      }
      throw new IllegalArgumentException("no column " + columnName);
    }
  }
}
