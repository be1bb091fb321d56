package outshop.catalogue;

import java.io.File;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.input.UnusableInput;

/**
 * Writes catalogue tables that a spreadsheet shows well and {@link CatalogueReader} reads as they
 * stand. Rows whose id starts with {@code #} are help for the person and are skipped by the reader.
 */
public final class CatalogueWriter {
  private CatalogueWriter() {}

  /**
   * Writes one table for each kind, each with its columns, their help and one example row, and
   * creates the folder if need be.
   *
   * @return the files written, in the order of the kinds
   * @throws UnusableInput naming every file that is already there (then none is written), or the
   *     one that cannot be written
   */
  public static List<Path> writeEmpty(Path folder) throws UnusableInput {
    List<Problem> taken = new ArrayList<>();
    List<Path> files = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      Path file = folder.resolve(kind.word() + ".csv");
      files.add(file);
      if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        taken.add(taken(file));
      }
    }
    if (!taken.isEmpty()) {
      throw new UnusableInput(taken);
    }
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new UnusableInput(List.of(unwritable(folder)));
    }
    for (Kind kind : Kind.values()) {
      write(folder, kind.word() + ".csv", emptyTable(kind));
    }
    return files;
  }

  /** The file appears under its name only when it is complete. */
  private static void write(Path folder, String name, String text) throws UnusableInput {
    Path file = folder.resolve(name);
    Path beside = folder.resolve("." + name + ".new");
    try {
      Files.write(beside, text.getBytes(StandardCharsets.UTF_8));
      Files.move(beside, file);
    } catch (FileAlreadyExistsException e) {
      throw new UnusableInput(List.of(taken(file)));
    } catch (IOException e) {
      throw new UnusableInput(List.of(unwritable(file)));
    } finally {
      remove(beside);
    }
  }

  /** A file left beside is hidden and harmless, so failing to remove it is no failure. */
  private static void remove(Path beside) {
    try {
      Files.deleteIfExists(beside);
    } catch (IOException harmless) {
      beside.toFile().deleteOnExit();
    }
  }

  private static Problem taken(Path file) {
    return Problem.error(
        Place.whole(shown(file)),
        "",
        "this file is already there and is not overwritten",
        "a folder without it");
  }

  private static Problem unwritable(Path file) {
    return Problem.error(
        Place.whole(shown(file)), "", "cannot be written", "a folder that may be written to");
  }

  private static String shown(Path path) {
    return path.toString().replace(File.separatorChar, '/');
  }

  /** The table of a kind with help lines and an example row. */
  public static String emptyTable(Kind kind) {
    Collection<Column> columns = Columns.of(kind);
    List<List<String>> lines = new ArrayList<>();
    lines.add(line("id", columns, Column::name));
    lines.add(line("#help", columns, Column::help));
    lines.add(line("#how", columns, Column::how));
    lines.add(line("#unit-or-words", columns, CatalogueWriter::unitOrWords));
    lines.add(line("example-" + kind.word(), columns, Column::example));
    return csv(lines);
  }

  /**
   * The table of a kind with the given parts, notes of the user's own last. Read back, it gives the
   * same parts.
   *
   * @param parts in the order of the rows; those of other kinds are left out
   */
  public static String table(Kind kind, Collection<Part> parts) {
    Set<String> notes = new TreeSet<>();
    for (Part part : parts) {
      if (part.kind() == kind) {
        notes.addAll(part.notes().keySet());
      }
    }
    List<List<String>> lines = new ArrayList<>();
    List<String> header = line("id", Columns.of(kind), Column::name);
    for (String note : notes) {
      header.add(guarded(note));
    }
    lines.add(header);
    for (Part part : parts) {
      if (part.kind() == kind) {
        List<String> line = line(part.id(), Columns.of(kind), c -> cell(part, c));
        for (String note : notes) {
          line.add(guarded(part.notes().getOrDefault(note, "")));
        }
        lines.add(line);
      }
    }
    String csv = csv(lines);
    return csv.chars().allMatch(c -> c < 0x80) ? csv : "\ufeff" + csv;
  }

  /** What a column's cell holds. */
  private interface CellOf {
    String text(Column column);
  }

  private static List<String> line(String id, Collection<Column> columns, CellOf cellOf) {
    List<String> line = new ArrayList<>();
    for (Column column : columns) {
      line.add(column.name().equals("id") ? id : cellOf.text(column));
    }
    return line;
  }

  private static String unitOrWords(Column column) {
    return switch (column.type()) {
      case TEXT -> "any text";
      case WORD -> CellText.oneOf(column.words());
      case WORDS ->
          column.words().contains("*")
              ? "words of your own, with spaces between"
              : "one or more of " + String.join(", ", column.words()) + ", with spaces between";
      case NUMBER -> unit(column);
      case NUMBER_OR_NONE -> unit(column) + ", or none";
    };
  }

  private static String unit(Column column) {
    return column.symbol().isEmpty() ? "a plain number" : "a number in " + column.symbol();
  }

  private static String cell(Part part, Column column) {
    if (column.isNumber()) {
      Double held = part.numbers().get(column.name());
      return held == null ? "" : held.isNaN() ? "none" : number(column, held);
    }
    String words = part.words().getOrDefault(column.name(), "");
    return column.type() == Column.Type.TEXT ? guarded(words) : words;
  }

  private static String number(Column column, double held) {
    return NumberForm.shown(BigDecimal.valueOf(held).divide(BigDecimal.valueOf(column.scale())));
  }

  /**
   * A text that a spreadsheet would take for a formula gets an apostrophe before it; so does one
   * that already begins with an apostrophe, as the reader drops one.
   */
  private static String guarded(String text) {
    return !text.isEmpty() && "=+-@'".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
  }

  private static String csv(List<List<String>> lines) {
    StringBuilder csv = new StringBuilder();
    for (List<String> line : lines) {
      for (int i = 0; i < line.size(); i++) {
        csv.append(i == 0 ? "" : ",").append(quoted(line.get(i)));
      }
      csv.append('\n');
    }
    return csv.toString();
  }

  private static String quoted(String cell) {
    for (int i = 0; i < cell.length(); i++) {
      if (",;\t\"\r\n".indexOf(cell.charAt(i)) >= 0) {
        return '"' + cell.replace("\"", "\"\"") + '"';
      }
    }
    return cell;
  }
}
