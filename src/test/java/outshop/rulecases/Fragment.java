package outshop.rulecases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.input.Tree;

/**
 * A plan as nested maps that an example can change: a path with points, and what then stands there.
 */
public final class Fragment {
  private static final Path BASE = Example.RULES.resolve("base-plan.yaml");
  private static final String REMOVE = "(remove)";

  private final Map<String, Object> root;

  private Fragment(Map<String, Object> root) {
    this.root = root;
  }

  /** The plan that every example starts from. */
  public static Fragment base() {
    try {
      return of(BASE.getFileName().toString(), Files.readAllBytes(BASE));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The plan in a file's text. */
  public static Fragment of(String file, byte[] bytes) {
    Tree.Read read = Tree.read(file, bytes);
    if (!read.problems().isEmpty()) {
      throw new IllegalStateException(read.problems().toString());
    }
    return new Fragment(fields((Tree.Fields) read.root().orElseThrow()));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> fields(Tree.Fields fields) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (Tree.Entry entry : fields.entries()) {
      map.put(entry.key(), value(entry.value()));
    }
    return map;
  }

  private static Object value(Tree.Node node) {
    if (node instanceof Tree.Fields fields) {
      return fields(fields);
    }
    if (node instanceof Tree.Rows rows) {
      List<Object> items = new ArrayList<>();
      rows.items().forEach(item -> items.add(value(item)));
      return items;
    }
    return ((Tree.Text) node).text();
  }

  /**
   * Puts a value at a path, making the maps on the way; {@code (remove)} takes away what stands
   * there.
   */
  void change(String path, Tree.Node to) {
    change(path, value(to));
  }

  /** As {@link #change(String, Tree.Node)}, for a text. */
  public void change(String path, Object to) {
    String[] steps = path.split("\\.");
    Map<String, Object> at = root;
    for (int i = 0; i < steps.length - 1; i++) {
      at = child(at, steps[i], path);
    }
    String last = steps[steps.length - 1];
    if (REMOVE.equals(to)) {
      if (at.remove(last) == null) {
        throw new IllegalStateException("nothing to remove at " + path);
      }
    } else {
      at.put(last, to);
    }
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> child(Map<String, Object> at, String step, String path) {
    Object next = at.computeIfAbsent(step, s -> new LinkedHashMap<String, Object>());
    if (next instanceof Map<?, ?> map) {
      return (Map<String, Object>) map;
    }
    throw new IllegalStateException("no map on the way to " + path);
  }

  /** The plan as a file's text. */
  public byte[] bytes() {
    StringBuilder text = new StringBuilder();
    write(root, 0, text);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void write(Map<String, Object> map, int indent, StringBuilder text) {
    map.forEach(
        (key, value) -> {
          text.append(" ".repeat(indent)).append(key).append(':');
          write(value, indent, text);
        });
  }

  @SuppressWarnings("unchecked")
  private static void write(Object value, int indent, StringBuilder text) {
    if (value instanceof Map<?, ?> map) {
      if (map.isEmpty()) {
        text.append(" {}\n");
        return;
      }
      text.append('\n');
      write((Map<String, Object>) map, indent + 2, text);
    } else if (value instanceof List<?> list) {
      text.append(list.isEmpty() ? " []\n" : "\n");
      for (Object item : list) {
        text.append(" ".repeat(indent + 2)).append('-');
        write(item, indent + 4, text);
      }
    } else {
      text.append(" \"")
          .append(value.toString().replace("\\", "\\\\").replace("\"", "\\\""))
          .append("\"\n");
    }
  }
}
