package outshop.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import outshop.units.Unit;

/** Every column of every kind of part, read once from {@code columns.txt}. */
public final class Columns {
  private static final Columns ALL = load();

  private final Map<Kind, Map<String, Column>> byKind;

  private Columns(Map<Kind, Map<String, Column>> byKind) {
    this.byKind = byKind;
  }

  /** The columns of a kind, in the order of its table; {@code id} is the first. */
  public static Collection<Column> of(Kind kind) {
    return ALL.byKind.get(kind).values();
  }

  public static Optional<Column> find(Kind kind, String name) {
    return Optional.ofNullable(ALL.byKind.get(kind).get(name));
  }

  /**
   * The column of that name. Errors: {@link IllegalArgumentException} if the kind has none, which
   * is a fault of the program.
   */
  public static Column require(Kind kind, String name) {
    Column column = ALL.byKind.get(kind).get(name);
    if (column == null) {
      throw new IllegalArgumentException("no column " + name + " of a " + kind.word());
    }
    return column;
  }

  private static Columns load() {
    Map<Kind, Map<String, Column>> byKind = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      byKind.put(kind, new LinkedHashMap<>());
    }
    List<Column> everywhere = new ArrayList<>();
    String text = text();
    for (int start = 0, end; start < text.length(); start = end + 1) {
      int lineEnd = text.indexOf('\n', start);
      end = lineEnd < 0 ? text.length() : lineEnd;
      String line = text.substring(start, end);
      if (line.isBlank() || line.charAt(0) == '#') {
        continue;
      }
      String[] cells = cells(line);
      Column column = column(cells);
      if (cells[0].equals("*")) {
        everywhere.add(column);
      } else {
        byKind.get(Kind.of(cells[0]).orElseThrow()).put(column.name(), column);
      }
    }
    for (Kind kind : Kind.values()) {
      byKind.put(kind, withShared(everywhere, byKind.get(kind)));
    }
    return new Columns(byKind);
  }

  private static String text() {
    try (InputStream in = Columns.class.getResourceAsStream("columns.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String[] cells(String line) {
    String[] cells = new String[10];
    int start = 0;
    for (int i = 0; i < cells.length; i++) {
      int bar = line.indexOf('|', start);
      boolean last = i == cells.length - 1;
      if (last != bar < 0) {
        throw new IllegalStateException("columns.txt: not ten cells: " + line);
      }
      int end = last ? line.length() : bar;
      cells[i] = line.substring(start, end).trim();
      start = end + 1;
    }
    return cells;
  }

  /**
   * The shared columns first (id, maker, title), then the kind's own, then the other shared ones
   * (price, origin, note).
   */
  private static Map<String, Column> withShared(List<Column> everywhere, Map<String, Column> own) {
    Map<String, Column> all = new LinkedHashMap<>();
    for (Column column : everywhere) {
      all.put(column.name(), column);
    }
    all.putAll(own);
    return all;
  }

  private static Column column(String[] cells) {
    // Asked for by constants: found by identity, without comparing letters.
    String name = cells[1].intern();
    String word = cells[2];
    Column.Type type =
        switch (word) {
          case "text" -> Column.Type.TEXT;
          case "word", "yesno" -> Column.Type.WORD;
          case "words" -> Column.Type.WORDS;
          case "number" -> Column.Type.NUMBER;
          case "number-or-none" -> Column.Type.NUMBER_OR_NONE;
          default -> throw new IllegalStateException("columns.txt: no type " + word);
        };
    boolean number = type == Column.Type.NUMBER || type == Column.Type.NUMBER_OR_NONE;
    Suffix suffix = number ? Suffix.of(name) : new Suffix("", Unit.COUNT, 1, "");
    List<String> words =
        word.equals("yesno")
            ? List.of("yes", "no")
            : cells[6].isEmpty() ? List.of() : Blanks.split(cells[6]);
    return new Column(
        name,
        type,
        suffix.unit(),
        suffix.scale(),
        number ? Double.parseDouble(cells[3]) : 0,
        number ? Double.parseDouble(cells[4]) : 0,
        cells[5].isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(Double.parseDouble(cells[5])),
        words,
        cells[7],
        cells[8],
        cells[9]);
  }
}
