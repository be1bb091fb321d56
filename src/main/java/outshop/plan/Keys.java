package outshop.plan;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import outshop.units.Unit;

/** Every key of a plan, read once from {@code keys.txt}. */
public final class Keys {
  private static final Map<String, Key> BY_PATH = load();

  /** The keys with names of the user's own in them, by their number of parts. */
  private static final List<List<Pattern>> PATTERNS = patterns();

  private Keys() {}

  /** Every key in the order of the file. */
  public static Collection<Key> all() {
    return BY_PATH.values();
  }

  /** The key that a full path belongs to, its own names standing for {@code *}. */
  public static Optional<Key> find(String path) {
    Key plain = BY_PATH.get(path);
    return plain != null ? Optional.of(plain) : match(path);
  }

  /**
   * As {@link #find}. Errors: {@link IllegalArgumentException} if there is none, which is a fault
   * of the program.
   */
  public static Key require(String path) {
    return find(path).orElseThrow(() -> new IllegalArgumentException("no key " + path));
  }

  /** A key whose path has {@code *} in it. */
  private record Pattern(String[] parts, Key key) {
    boolean matches(String[] path) {
      for (int i = 0; i < parts.length; i++) {
        if (!parts[i].equals("*") && !parts[i].equals(path[i])) {
          return false;
        }
      }
      return true;
    }
  }

  private static Optional<Key> match(String path) {
    String[] parts = parts(path);
    if (parts.length < PATTERNS.size()) {
      for (Pattern pattern : PATTERNS.get(parts.length)) {
        if (pattern.matches(parts)) {
          return Optional.of(pattern.key());
        }
      }
    }
    return Optional.empty();
  }

  private static List<List<Pattern>> patterns() {
    List<List<Pattern>> byLength = new ArrayList<>();
    for (Key key : BY_PATH.values()) {
      if (key.path().indexOf('*') >= 0) {
        String[] parts = parts(key.path());
        while (byLength.size() <= parts.length) {
          byLength.add(new ArrayList<>());
        }
        byLength.get(parts.length).add(new Pattern(parts, key));
      }
    }
    return byLength;
  }

  private static String[] parts(String path) {
    return path.split("\\.");
  }

  private static Map<String, Key> load() {
    Map<String, Key> keys = new LinkedHashMap<>();
    try (InputStream in = Keys.class.getResourceAsStream("keys.txt");
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.isBlank() && !line.startsWith("#")) {
          Key key = key(line);
          keys.put(key.path().intern(), key);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return keys;
  }

  private static Key key(String line) {
    String[] cells = line.split("\\|", -1);
    if (cells.length != 10) {
      throw new IllegalStateException("keys.txt: not ten cells: " + line);
    }
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cells[i].trim();
    }
    Map<String, Key.Type> types = new HashMap<>();
    for (Key.Type type : Key.Type.values()) {
      types.put(type.name().toLowerCase(Locale.ROOT).replace('_', '-'), type);
    }
    boolean yesno = cells[1].equals("yesno");
    Key.Type type = yesno ? Key.Type.WORD : types.get(cells[1]);
    if (type == null) {
      throw new IllegalStateException("keys.txt: no type " + cells[1]);
    }
    Unit unit = unit(cells[2]);
    double scale = unit == Unit.SHARE ? 0.01 : 1;
    return new Key(
        cells[0],
        type,
        unit,
        cells[3].isEmpty() ? Double.NEGATIVE_INFINITY : Double.parseDouble(cells[3]) * scale,
        cells[4].isEmpty() ? Double.POSITIVE_INFINITY : Double.parseDouble(cells[4]) * scale,
        assumed(cells[5], scale),
        yesno ? List.of("yes", "no") : words(cells[6]),
        cells[7],
        cells[8],
        cells[9]);
  }

  private static List<String> words(String cell) {
    return cell.isEmpty() ? List.of() : List.of(cell.split("\\s+"));
  }

  private static Optional<Key.Assumed> assumed(String cell, double scale) {
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    List<Double> numbers = new ArrayList<>();
    for (String number : cell.split("\\s+")) {
      numbers.add(Double.parseDouble(number) * scale);
    }
    return Optional.of(new Key.Assumed(numbers.get(0), numbers.get(1), numbers.get(2)));
  }

  private static Unit unit(String word) {
    return switch (word) {
      case "" -> Unit.COUNT;
      case "volts" -> Unit.VOLTS;
      case "amps" -> Unit.AMPS;
      case "ohms" -> Unit.OHMS;
      case "watts" -> Unit.WATTS;
      case "m" -> Unit.METRES;
      case "celsius" -> Unit.CELSIUS;
      case "seconds" -> Unit.SECONDS;
      case "hours" -> Unit.HOURS;
      case "share" -> Unit.SHARE;
      case "money" -> Unit.MONEY;
      default -> throw new IllegalStateException("keys.txt: no unit " + word);
    };
  }
}
