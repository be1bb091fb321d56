package outshop.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import outshop.catalogue.Kind;
import outshop.input.Place;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * A plan as read: every stated value under its full path ({@code locomotive.motors.main.blocked}),
 * the fitted parts by name, the wires by row. A path that is not there was not stated. A name of
 * the user's own is stated by its section alone ({@code locomotive.motors.main}), also where
 * nothing stands in it; a part's path holds its id; the rows of a list are numbered from 1 ({@code
 * measured.joined.1.one}).
 */
public final class Plan {
  private final String file;
  private final Map<String, Stated> stated;
  private final Map<String, Fitted> parts;
  private final Map<String, Fitted> materials;
  private final List<WireRow> wires;
  private final List<Accepted> accepted;
  private final Map<Kind, List<Fitted>> byKind = new EnumMap<>(Kind.class);

  /** What was once asked for; the same every time. */
  private final Map<String, Amount> amounts = new ConcurrentHashMap<>();

  private final Map<String, List<String>> names = new ConcurrentHashMap<>();

  /**
   * What stands at a path.
   *
   * @param texts the word, text or name; several for a list of names; none for a quantity
   * @param value of a quantity or count, in its key's unit; {@link Double#NaN} where {@code none}
   *     was written
   */
  public record Stated(List<String> texts, double value, Place place) {}

  /** Two terminals found to have continuity that should be separate. */
  public record Joined(String one, String other, Place place) {}

  /**
   * A plan from what was read.
   *
   * @param parts what is fitted, and the materials: a name of the user's own has no point in it, so
   *     one with a point ({@code wiring.wire}) is the key at which a part stands that is no thing
   *     of its own on the locomotive; {@link #part} finds it, {@link #parts()} does not list it
   */
  public Plan(
      String file,
      Map<String, Stated> stated,
      Collection<Fitted> parts,
      List<WireRow> wires,
      List<Accepted> accepted) {
    this.file = file;
    this.stated = new LinkedHashMap<>(stated);
    this.parts = new LinkedHashMap<>();
    this.materials = new LinkedHashMap<>();
    parts.stream()
        .sorted(
            (a, b) ->
                a.kind() != b.kind() ? a.kind().compareTo(b.kind()) : a.name().compareTo(b.name()))
        .forEach(f -> (f.isMaterial() ? this.materials : this.parts).put(f.name(), f));
    for (Fitted fitted : this.parts.values()) {
      byKind.computeIfAbsent(fitted.kind(), k -> new ArrayList<>()).add(fitted);
    }
    byKind.replaceAll((kind, ofKind) -> List.copyOf(ofKind));
    this.wires = List.copyOf(wires);
    this.accepted = List.copyOf(accepted);
  }

  public String file() {
    return file;
  }

  /** The plan's title, or its file name where it has none. */
  public String title() {
    return text("title").orElse(file);
  }

  /**
   * The quantity or count at a path, as far as it is known; an assumed default where the key has
   * one.
   */
  public Amount amount(String path) {
    Amount known = amounts.get(path);
    if (known == null) {
      known = read(path);
      amounts.put(path, known);
    }
    return known;
  }

  private Amount read(String path) {
    Key key = Keys.require(path);
    Stated at = stated.get(path);
    String label = path.substring(path.indexOf('.') + 1).replace('.', ' ').replace('_', ' ');
    if (at != null) {
      if (Double.isNaN(at.value())) {
        return new Amount.Absent(label);
      }
      Origin origin =
          path.startsWith("locomotive.") || path.startsWith("measured.")
              ? Origin.MEASURED
              : Origin.PLAN;
      return Amount.known(at.value(), key.unit(), origin, label, origin.words());
    }
    if (key.assumed().isPresent()) {
      Key.Assumed d = key.assumed().get();
      return Amount.assumed(
          d.value(), d.low(), d.high(), key.unit(), label, "not stated; usual value");
    }
    return Amount.missing(owner(path), key.name(), key.how());
  }

  /** The word at a path, as far as it was stated. */
  public Said said(String path) {
    Stated at = stated.get(path);
    if (at != null && !at.texts().isEmpty()) {
      return new Said.Word(at.texts().get(0), Origin.PLAN, path);
    }
    Key key = Keys.require(path);
    return new Said.Unsaid(new Want(owner(path), key.name(), key.how()));
  }

  /** The text at a path. */
  public Optional<String> text(String path) {
    Stated at = stated.get(path);
    return at == null || at.texts().isEmpty() ? Optional.empty() : Optional.of(at.texts().get(0));
  }

  /**
   * The list of names at a path: empty if it was not stated, an empty list if {@code [none]} was.
   */
  public Optional<List<String>> list(String path) {
    Stated at = stated.get(path);
    if (at == null) {
      return Optional.empty();
    }
    return Optional.of(at.texts().stream().filter(t -> !t.equals("none")).toList());
  }

  /**
   * The user's own names under a path: {@code names("locomotive.motors")} gives the motors, in the
   * plan's order.
   */
  public List<String> names(String path) {
    List<String> known = names.get(path);
    if (known == null) {
      known = List.copyOf(namesUnder(path + "."));
      names.put(path, known);
    }
    return known;
  }

  private Set<String> namesUnder(String prefix) {
    Set<String> names = new LinkedHashSet<>();
    for (String stated : stated.keySet()) {
      if (stated.startsWith(prefix)) {
        int end = stated.indexOf('.', prefix.length());
        String name =
            end < 0 ? stated.substring(prefix.length()) : stated.substring(prefix.length(), end);
        names.add(name);
      }
    }
    return names;
  }

  /** Where a path stands in the file, or the whole file if it is not stated. */
  public Place place(String path) {
    Stated at = stated.get(path);
    return at == null ? Place.whole(file) : at.place();
  }

  /** This plan with other parts and materials in place of its own. */
  public Plan withParts(Collection<Fitted> others) {
    return new Plan(file, stated, others, wires, accepted);
  }

  /** This plan with these parts and materials besides its own, as if it had named them. */
  public Plan with(Collection<Fitted> more) {
    List<Fitted> all = new ArrayList<>(parts.values());
    all.addAll(materials.values());
    all.addAll(more);
    Map<String, Stated> named = new LinkedHashMap<>(stated);
    List<WireRow> rows = wires;
    for (Fitted fitted : more) {
      String path = fitted.isMaterial() ? fitted.name() : "parts." + fitted.name();
      named.put(path, new Stated(List.of(fitted.part().id()), 0, fitted.place()));
      if (fitted.name().equals("wiring.wire")) {
        rows = rows.stream().map(row -> row.withoutItsOwn() ? row.of(fitted.part()) : row).toList();
      }
    }
    return new Plan(file, named, all, rows, accepted);
  }

  /** Which of the things stated in a plan are meant: by path, and whether a number stands there. */
  public interface Meant {
    boolean matches(String path, boolean number);
  }

  /** This plan as if what is meant had never been stated. */
  public Plan without(Meant meant) {
    Map<String, Stated> left = new LinkedHashMap<>();
    stated.forEach(
        (path, at) -> {
          if (!meant.matches(path, at.texts().isEmpty() && !isSection(path))) {
            left.put(path, at);
          }
        });
    List<Fitted> all = new ArrayList<>(parts.values());
    all.addAll(materials.values());
    return new Plan(file, left, all, wires, accepted);
  }

  /** Whether a path is a name of the user's own that only holds others. */
  private static boolean isSection(String path) {
    return Keys.find(path).isEmpty();
  }

  /** Every fitted part, in the order of the power path, then of name. */
  public Collection<Fitted> parts() {
    return Collections.unmodifiableCollection(parts.values());
  }

  public List<Fitted> parts(Kind kind) {
    return byKind.getOrDefault(kind, List.of());
  }

  /** The fitted part of that name, or the material at that key, such as {@code wiring.wire}. */
  public Optional<Fitted> part(String name) {
    Fitted fitted = parts.get(name);
    return Optional.ofNullable(fitted != null ? fitted : materials.get(name));
  }

  /** The parts at keys of their own, such as {@code wiring.wire}; named by their key. */
  public Collection<Fitted> materials() {
    return Collections.unmodifiableCollection(materials.values());
  }

  /** The wires that the plan lists one by one. */
  public List<WireRow> wires() {
    return wires;
  }

  public List<Accepted> accepted() {
    return accepted;
  }

  /** The pairs of terminals found to have continuity that should be separate, in their order. */
  public List<Joined> joined() {
    List<Joined> pairs = new ArrayList<>();
    for (String row : names("measured.joined")) {
      String path = "measured.joined." + row;
      Optional<String> one = text(path + ".one");
      Optional<String> other = text(path + ".other");
      if (one.isPresent() && other.isPresent()) {
        pairs.add(new Joined(one.get(), other.get(), place(path + ".one")));
      }
    }
    return pairs;
  }

  /** Everything stated, by its full path, in the plan's order. */
  public Map<String, Stated> stated() {
    return Collections.unmodifiableMap(stated);
  }

  /**
   * The thing a path belongs to, for naming what is wanted: {@code main} for a motor's key, {@code
   * wiring} for the wiring's.
   */
  private static String owner(String path) {
    int last = path.lastIndexOf('.');
    return last < 0 ? "plan" : path.substring(path.lastIndexOf('.', last - 1) + 1, last);
  }

  /** A number that the program itself fixes, such as a count of one. */
  public static Amount fixed(double value, Unit unit, String label, String why) {
    return Amount.known(value, unit, Origin.STANDARD, label, why);
  }
}
