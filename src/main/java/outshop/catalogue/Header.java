package outshop.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.input.Nearest;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.input.Shown;

/**
 * The first row of a table.
 *
 * @param headings from left to right
 * @param idAt which of them is the id, or -1
 */
record Header(List<Heading> headings, int idAt) {
  private static final Heading NONE = new Heading.None();

  Header {
    headings = List.copyOf(headings);
  }

  int size() {
    return headings.size();
  }

  Heading at(int index) {
    return headings.get(index);
  }

  /** Reads the row that {@code rows} stands at; what is wrong with it goes to {@code log}. */
  static Header read(Kind kind, String file, Rows rows, ProblemLog log) {
    List<String> columnNames = names(kind);
    List<Heading> headings = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    int idAt = -1;
    for (int i = 0; i < Math.min(rows.size(), Rows.MOST_CELLS); i++) {
      Heading heading = heading(kind, rows.cell(i));
      Integer first = heading instanceof Heading.None ? null : seen.putIfAbsent(key(heading), i);
      if (first != null) {
        log.add(
            twice(rows.cell(i), place(file, rows, i, heading), place(file, rows, first, heading)));
        heading = new Heading.Repeated();
      } else if (heading instanceof Heading.Own own) {
        Optional<String> near = Nearest.word(Heading.normal(own.name()), columnNames);
        if (near.isPresent()) {
          log.add(notAColumn(own, near.get(), place(file, rows, i, heading)));
        }
      } else if (heading.shown().equals("id")) {
        idAt = i;
      }
      headings.add(heading);
    }
    if (idAt < 0) {
      log.add(noId(file, rows, columnNames));
    }
    return new Header(headings, idAt);
  }

  private static List<String> names(Kind kind) {
    List<String> names = new ArrayList<>();
    for (Column column : Columns.of(kind)) {
      names.add(column.name());
    }
    return names;
  }

  private static Heading heading(Kind kind, String cell) {
    String name = Blanks.inOneLine(CellText.withoutApostrophe(cell));
    if (name.isEmpty()) {
      return NONE;
    }
    Optional<Column> column = Columns.find(kind, Heading.normal(name));
    return column.isPresent() ? new Heading.Known(column.get()) : new Heading.Own(Shown.text(name));
  }

  private static String key(Heading heading) {
    return Heading.normal(heading.shown());
  }

  private static Problem twice(String cell, Place place, Place first) {
    return Problem.error(
        place,
        cell,
        "two columns of the same name",
        "each name once; the first stands at " + first.position());
  }

  /** A column of the user's own whose name looks like a slip for a real one. */
  private static Problem notAColumn(Heading.Own own, String near, Place place) {
    return new Problem(
        Problem.Severity.UNLIKELY,
        place,
        own.name(),
        "not a column of this table, kept as a note (did you mean \"" + near + "\"?)",
        "");
  }

  private static Problem noId(String file, Rows rows, List<String> columnNames) {
    return Problem.error(
        new Place(file, rows.line(0), 0, "row " + rows.number()),
        "",
        "no column is called id",
        "a header of column names, such as "
            + columnNames.get(0)
            + ", "
            + columnNames.get(1)
            + ", "
            + columnNames.get(2)
            + ", with commas, semicolons or tabs between");
  }

  private static Place place(String file, Rows rows, int index, Heading heading) {
    String name = heading.shown();
    String path = "row " + rows.number() + (name.isEmpty() ? "" : ", column " + name);
    return new Place(file, rows.line(index), rows.column(index), path);
  }
}
