package outshop.catalogue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import outshop.input.Nearest;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.input.UnusableInput;

/**
 * Reads a catalogue: a folder with one table for each kind of part ({@code pack.csv}, {@code
 * receiver.csv}), or a single such table. Whatever a file holds, it is read to its end and
 * everything wrong is told at once.
 */
public final class CatalogueReader {
  /** A larger file is refused. */
  static final int MOST_BYTES = 16 * 1024 * 1024;

  private static final Set<String> OTHER_TABLES = Set.of("xlsx", "xls", "ods", "tsv", "txt");

  /**
   * What was read.
   *
   * @param catalogue every part that could be read; incomplete if there are errors
   * @param problems in the order of file, line and column
   */
  public record Read(Catalogue catalogue, List<Problem> problems) {
    public Read {
      problems = List.copyOf(problems);
    }

    /** Whether no problem is an error. */
    public boolean isUsable() {
      for (Problem problem : problems) {
        if (problem.severity() == Problem.Severity.ERROR) {
          return false;
        }
      }
      return true;
    }

    /**
     * The catalogue. Errors: {@link UnusableInput} with all problems if any of them is an error.
     */
    public Catalogue orThrow() throws UnusableInput {
      if (!isUsable()) {
        throw new UnusableInput(problems);
      }
      return catalogue;
    }
  }

  private final List<Part> parts = new ArrayList<>();
  private final List<List<TableReader.IdAt>> ids = new ArrayList<>();
  private final List<ProblemLog> logs = new ArrayList<>();

  private CatalogueReader() {}

  /**
   * Reads the tables in a folder, in the order of their names, or a single table. Hidden files and
   * files that are no tables are left alone.
   *
   * @param path as the user named it; problems name the files by it
   */
  public static Read read(Path path) {
    CatalogueReader reader = new CatalogueReader();
    String shown = shown(path);
    if (Files.isDirectory(path)) {
      reader.folder(path, shown);
    } else if (Files.exists(path)) {
      reader.file(path, shown);
    } else {
      reader
          .log(shown)
          .add(
              Problem.error(
                  Place.whole(shown),
                  "",
                  "there is no such file or folder",
                  "a folder of tables such as pack.csv and receiver.csv"));
    }
    return reader.done();
  }

  /**
   * Reads tables that are in memory.
   *
   * @param files the bytes of each table, by its name such as {@code catalogue/pack.csv}
   */
  public static Read read(Map<String, byte[]> files) {
    CatalogueReader reader = new CatalogueReader();
    for (Map.Entry<String, byte[]> file : new TreeMap<>(files).entrySet()) {
      reader.table(file.getKey(), file.getValue());
    }
    return reader.done();
  }

  private static String shown(Path path) {
    return path.toString().replace(File.separatorChar, '/');
  }

  private ProblemLog log(String file) {
    ProblemLog log = new ProblemLog(file);
    logs.add(log);
    return log;
  }

  private void folder(Path folder, String shown) {
    Set<String> names = new TreeSet<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        names.add(entry.getFileName().toString());
      }
    } catch (IOException | DirectoryIteratorException e) {
      log(shown).add(unreadable(shown));
      return;
    }
    boolean any = false;
    for (String name : names) {
      boolean hidden = name.startsWith(".") || name.startsWith("~");
      if (!hidden && ending(name).equals("csv")) {
        any = true;
        file(folder.resolve(name), shown(folder.resolve(name)));
      } else if (!hidden) {
        otherTable(name, names, shown(folder.resolve(name)));
      }
    }
    if (!any) {
      log(shown)
          .add(
              Problem.error(
                  Place.whole(shown),
                  "",
                  "there is no table in this folder",
                  "files such as pack.csv and receiver.csv"));
    }
  }

  /** A table that somebody forgot to save as CSV. */
  private void otherTable(String name, Set<String> names, String shown) {
    String stem = stem(name);
    boolean forgotten =
        OTHER_TABLES.contains(ending(name))
            && Kind.of(stem).isPresent()
            && !names.contains(stem + ".csv");
    if (forgotten) {
      log(shown)
          .add(
              new Problem(
                  Problem.Severity.UNLIKELY,
                  Place.whole(shown),
                  "",
                  "this file is not read",
                  "the sheet saved as " + stem + ".csv"));
    }
  }

  private void file(Path path, String shown) {
    if (!Files.isRegularFile(path)) {
      log(shown).add(Problem.error(Place.whole(shown), "", "not a file", "a table in CSV"));
      return;
    }
    try (InputStream in = Files.newInputStream(path)) {
      table(shown, in.readNBytes(MOST_BYTES + 1));
    } catch (IOException e) {
      log(shown).add(unreadable(shown));
    }
  }

  private static Problem unreadable(String shown) {
    return Problem.error(
        Place.whole(shown), "", "cannot be read", "a file or folder that may be read");
  }

  private void table(String file, byte[] bytes) {
    ProblemLog log = log(file);
    String name = file.substring(file.lastIndexOf('/') + 1);
    Optional<Kind> kind = Kind.of(stem(name));
    if (kind.isEmpty() || !ending(name).equals("csv")) {
      log.add(noKind(file, name));
      return;
    }
    if (bytes.length > MOST_BYTES) {
      log.add(Problem.error(Place.whole(file), "", "the file is too large", "at most 16 MB"));
      return;
    }
    TableText decoded = TableText.of(bytes);
    if (decoded instanceof TableText.Unreadable unreadable) {
      log.add(Problem.error(Place.whole(file), "", unreadable.what(), unreadable.expected()));
      return;
    }
    TableText.Text text = (TableText.Text) decoded;
    if (text.isWindows1252()) {
      log.add(
          new Problem(
              Problem.Severity.NOTE,
              Place.whole(file),
              "",
              "read as Windows-1252, as it is no UTF-8; signs such as \u00b5 and \u00b0 may be wrong",
              "the sheet saved as CSV (UTF-8)"));
    }
    TableReader table = new TableReader(kind.get(), file, log);
    table.read(text.text());
    parts.addAll(table.parts());
    ids.add(table.ids());
  }

  private static Problem noKind(String file, String name) {
    List<String> words = Kind.words();
    return Problem.error(
        Place.whole(file),
        "",
        "no kind of part has this name" + Nearest.hint(stem(name), words),
        "one of " + String.join(", ", words) + ", and .csv after it");
  }

  private static String stem(String name) {
    int dot = name.lastIndexOf('.');
    return (dot < 0 ? name : name.substring(0, dot)).toLowerCase(Locale.ROOT);
  }

  private static String ending(String name) {
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  private Read done() {
    Map<String, TableReader.IdAt> firsts = new HashMap<>();
    for (List<TableReader.IdAt> ofFile : ids) {
      for (TableReader.IdAt id : ofFile) {
        TableReader.IdAt first = firsts.putIfAbsent(id.id(), id);
        if (first != null) {
          twice(id, first);
        }
      }
    }
    List<Problem> problems = new ArrayList<>();
    for (ProblemLog log : logs) {
      problems.addAll(log.inOrder());
    }
    return new Read(new Catalogue(parts), problems);
  }

  private void twice(TableReader.IdAt id, TableReader.IdAt first) {
    for (ProblemLog log : logs) {
      if (log.isOf(id.file())) {
        log.add(
            Problem.error(
                id.place(),
                id.id(),
                "the id stands twice in the catalogue",
                "another id; the first stands at " + first.place().position()));
        return;
      }
    }
  }
}
