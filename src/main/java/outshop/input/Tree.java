package outshop.input;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A user's YAML file as a small tree: fields with their keys, rows and texts, each with its place.
 * Every value stays the text that was written, so {@code no}, {@code 010} and {@code 1.50} are what
 * they look like. Of YAML only this much is taken: one document of plain keys, lists and texts;
 * anchors, aliases, merge keys and tags are refused, as are keys that stand twice.
 */
public final class Tree {
  /** The greatest size of a file, in bytes. */
  public static final int LARGEST_BYTES = 1_000_000;

  /** How deep fields and rows may be nested. */
  public static final int DEEPEST = 30;

  private Tree() {}

  /** A piece of the file; line and column count from 1. */
  public sealed interface Node permits Fields, Rows, Text {
    int line();

    int column();
  }

  /** Keys with their values, in the order of the file; no key stands twice. */
  public record Fields(List<Entry> entries, int line, int column) implements Node {
    public Fields {
      entries = List.copyOf(entries);
    }

    public Optional<Entry> find(String key) {
      return entries.stream().filter(e -> e.key().equals(key)).findFirst();
    }
  }

  /** A key at its place, and its value. */
  public record Entry(String key, int line, int column, Node value) {}

  /** A list. */
  public record Rows(List<Node> items, int line, int column) implements Node {
    public Rows {
      items = List.copyOf(items);
    }
  }

  /**
   * One text as written, without its quotation marks.
   *
   * @param quoted whether it stood in quotation marks
   */
  public record Text(String text, boolean quoted, int line, int column) implements Node {
    /** Whether nothing was written at all; {@code ""} is written. */
    public boolean isBlank() {
      return !quoted && text.isEmpty();
    }
  }

  /**
   * What became of a file.
   *
   * @param root the tree, as far as its parts are sound; empty if the file could not be read to its
   *     end
   * @param problems what was refused, in the order of the file
   */
  public record Read(Optional<Node> root, List<Problem> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Reads a file's bytes. Never throws for what stands in them.
   *
   * @param file the file's name for messages
   */
  public static Read read(String file, byte[] bytes) {
    if (bytes.length > LARGEST_BYTES) {
      return tooLarge(file, bytes.length);
    }
    return new TreeReader(file).read(bytes);
  }

  /**
   * Reads a file. A file that cannot be opened is a problem like any other.
   *
   * @param file the file's name for messages
   */
  public static Read read(String file, Path path) {
    try {
      long size = Files.size(path);
      return size > LARGEST_BYTES ? tooLarge(file, size) : read(file, Files.readAllBytes(path));
    } catch (IOException e) {
      String what =
          Files.isDirectory(path)
              ? "this is a folder"
              : Files.exists(path) ? "the file cannot be opened" : "there is no such file";
      return refused(Problem.error(Place.whole(file), "", what, "a file that can be read"));
    }
  }

  private static Read tooLarge(String file, long bytes) {
    String size = String.format(Locale.ROOT, "%.1f MB", bytes / 1e6);
    return refused(
        Problem.error(Place.whole(file), size, "the file is too large", "1 MB at the most"));
  }

  private static Read refused(Problem problem) {
    return new Read(Optional.empty(), List.of(problem));
  }
}
