package outshop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Shown;

/**
 * Writes a plan to start from: every section and every key with what it is, how to get it and an
 * example. Nothing is filled in that is not known: a key counts only once the {@code #} in front of
 * it is taken away. Lines of explanation have a space behind their {@code #}, keys have none.
 */
public final class PlanWriter {
  private static final int WIDTH = 96;

  /**
   * What is known of a locomotive before anything is measured.
   *
   * @param title what the plan is called; may be empty
   * @param motors the user's names for the motors; likewise the others; each may be empty
   */
  public record Start(
      String title,
      List<String> motors,
      List<String> lamps,
      List<String> bays,
      List<String> smokeHeaters) {

    /** Errors: {@link IllegalArgumentException} for a name that cannot be used or stands twice. */
    public Start {
      List<String> all = new ArrayList<>();
      for (List<String> names : List.of(motors, lamps, bays, smokeHeaters)) {
        for (String name : names) {
          Optional<String> fault = nameFault(name);
          if (fault.isPresent()) {
            throw new IllegalArgumentException(
                "\"%s\": %s".formatted(Shown.text(name), fault.get()));
          }
          if (all.contains(name)) {
            throw new IllegalArgumentException("\"%s\": the name is taken".formatted(name));
          }
          all.add(name);
        }
      }
      motors = List.copyOf(motors);
      lamps = List.copyOf(lamps);
      bays = List.copyOf(bays);
      smokeHeaters = List.copyOf(smokeHeaters);
    }

    private boolean isTaken(String name) {
      return motors.contains(name)
          || lamps.contains(name)
          || bays.contains(name)
          || smokeHeaters.contains(name);
    }
  }

  private final StringBuilder out = new StringBuilder();
  private final Start start;
  private final Catalogue catalogue;

  private PlanWriter(Start start, Catalogue catalogue) {
    this.start = start;
    this.catalogue = catalogue;
  }

  /** What is wrong with a name for a motor, lamp, bay or part; empty if it will do. */
  public static Optional<String> nameFault(String name) {
    return OwnName.fault(name).map(f -> f + "; expected " + OwnName.wanted(name));
  }

  /** As {@link #starter(Start, Catalogue)}, without a title and smoke heaters. */
  public static String starter(
      List<String> motors, List<String> lamps, List<String> bays, Catalogue catalogue) {
    return starter(new Start("", motors, lamps, bays, List.of()), catalogue);
  }

  /**
   * The text of a plan to start from.
   *
   * @param catalogue gives the ids used as examples; where it has none of a kind, the example is
   *     written out
   */
  public static String starter(Start start, Catalogue catalogue) {
    PlanWriter writer = new PlanWriter(start, catalogue);
    writer.comment(
        0, "A plan for Outshop. Take away the # in front of a key once its value is known.");
    writer.comment(0, "A key left out counts as not known, never as zero and never as none.");
    writer.comment(0, "Values carry their unit: 2.4 A, 60 mA, 14.4 V, 8 ohm, 140 mm, 22 AWG.");
    for (String name : KeyTree.ROOT.names()) {
      writer.top(name, KeyTree.ROOT.named(name).orElseThrow());
    }
    return writer.out.toString();
  }

  private void top(String name, KeyTree at) {
    boolean ownSection = at.isSection();
    if (ownSection) {
      out.append('\n');
      comment(0, sectionWords(name));
      line(0, name + ":");
      below(at, 1, true);
    } else {
      value(name, at, 0, true);
    }
  }

  private static String sectionWords(String name) {
    return switch (name) {
      case "locomotive" -> "The locomotive as it is: what the measuring sheet asks for.";
      case "wishes" -> "What the owner wants.";
      case "parts" -> "The parts that are fitted, under names of your own.";
      case "outputs" -> "The decoder's function outputs: out-1, out-2 and so on.";
      case "speakers" -> "The speakers together.";
      case "measured" -> "What was measured on the electronics; it then counts before data sheets.";
      case "wiring" -> "How it is wired.";
      default -> throw new IllegalStateException("nobody described the section " + name);
    };
  }

  /** Writes everything that may stand below a section. */
  private void below(KeyTree at, int depth, boolean explained) {
    if (at.path().equals("parts")) {
      parts(depth);
      return;
    }
    if (at.own().isPresent()) {
      own(at, at.own().get(), depth);
      return;
    }
    for (String name : at.names()) {
      KeyTree place = at.named(name).orElseThrow();
      if (place.isSection()) {
        line(depth, name + ":");
        below(place, depth + 1, explained);
      } else {
        value(name, place, depth, explained);
      }
    }
  }

  private void own(KeyTree section, KeyTree at, int depth) {
    List<String> names = given(section.path());
    if (names.isEmpty()) {
      line(depth, "#" + example(section.path()) + ":");
      below(at, depth + 1, true);
    }
    for (String name : names) {
      line(depth, name + ":");
      below(at, depth + 1, name.equals(names.get(0)));
    }
  }

  private List<String> given(String section) {
    return switch (section) {
      case "locomotive.motors" -> start.motors();
      case "locomotive.lamps" -> start.lamps();
      case "locomotive.bays" -> start.bays();
      case "locomotive.smoke" -> start.smokeHeaters();
      default -> List.of();
    };
  }

  /** The first name under a section, or one to stand for it. */
  private String example(String section) {
    List<String> names = given(section);
    if (!names.isEmpty()) {
      return names.get(0);
    }
    return switch (section) {
      case "locomotive.motors" -> free("motor");
      case "locomotive.lamps" -> free("front");
      case "locomotive.bays" -> free("tender");
      case "locomotive.smoke" -> free("smoke");
      default -> "out-1";
    };
  }

  private String free(String name) {
    return start.isTaken(name) ? free(name + "-x") : name;
  }

  private void value(String name, KeyTree at, int depth, boolean explained) {
    Key key = at.key().orElseThrow();
    if (explained) {
      explain(key, depth);
    }
    boolean known = name.equals("outshop_plan");
    String example = example(key, at);
    if (name.equals("title") && !start.title().isBlank()) {
      known = true;
      example = "'" + Shown.text(start.title().strip()).replace("'", "''") + "'";
    }
    line(depth, (known ? "" : "#") + name + ": " + example);
  }

  private void explain(Key key, int depth) {
    comment(depth, key.help());
    if (!key.how().equals("decide") && !key.how().equals("choose")) {
      comment(depth, "  how to get it: " + key.how());
    }
    if (!key.words().isEmpty()) {
      comment(depth, "  one of: " + String.join(", ", key.words()));
    }
    if (key.assumed().isPresent()) {
      Written written = Written.like(key);
      Key.Assumed d = key.assumed().get();
      String range = written.text(d.low()) + " to " + written.text(d.high());
      comment(depth, "  left out: assumed to be " + written.text(d.value()) + " (" + range + ")");
    }
  }

  private String example(Key key, KeyTree at) {
    return switch (key.type()) {
      case PART -> part(Kind.WIRE);
      case ROWS -> "[" + row(at) + "]";
      case NAME, NAMES -> {
        String name = name(key);
        yield key.example().startsWith("[") && !name.startsWith("[") ? "[" + name + "]" : name;
      }
      default -> key.example();
    };
  }

  private String row(KeyTree at) {
    List<String> fields = new ArrayList<>();
    for (String name : at.names()) {
      KeyTree field = at.named(name).orElseThrow();
      fields.add(name + ": " + example(field.key().orElseThrow(), field));
    }
    return "{" + String.join(", ", fields) + "}";
  }

  /** An example that names things of this very plan. */
  private String name(Key key) {
    if (key.path().equals("vehicles") || key.example().equals("[none]")) {
      return key.example();
    }
    return switch (Refers.of(key)) {
      case NOTHING, OWN -> key.example();
      case BAY -> example("locomotive.bays");
      case SMOKE -> example("locomotive.smoke");
      case LOAD -> example("locomotive.lamps");
      case RESISTOR -> partName(Kind.RESISTOR);
      case DECODER -> partName(Kind.DECODER);
      case LINK -> partName(key.path().equals("wiring.pack_through") ? Kind.CONNECTOR : Kind.CABLE);
      case TERMINAL, TERMINAL_OR_COMMON -> terminal(key.example());
    };
  }

  /** The example's terminal, of the thing that has its owner's place in this plan. */
  private String terminal(String example) {
    int point = example.indexOf('.');
    String owner = example.substring(0, point);
    String terminal = example.substring(point);
    return owner.equals("motor")
        ? example("locomotive.motors") + terminal
        : partName(Kind.of(owner).orElseThrow()) + terminal;
  }

  private String partName(Kind kind) {
    return free(kind.word());
  }

  private void parts(int depth) {
    comment(depth, "Each is written in one of three ways:");
    comment(depth, "  NAME: ID                      a part of the catalogue, by its id");
    comment(depth, "  NAME: {part: ID, ...}         the same, with columns that differ from it");
    comment(depth, "  NAME: {kind: KIND, ...}       a part that is not in the catalogue, with its");
    comment(depth, "                                columns and their units: rated_amps: 5 A");
    comment(depth, "The pack shows what may be said of every part as it is fitted.");
    for (Kind kind : Kind.values()) {
      if (kind == Kind.PACK) {
        pack(depth);
      } else if (kind != Kind.WIRE) {
        line(depth, "#" + partName(kind) + ": " + part(kind));
      }
    }
  }

  private void pack(int depth) {
    line(depth, "#" + partName(Kind.PACK) + ":");
    if (catalogue.of(Kind.PACK).isEmpty()) {
      writtenOut(Kind.PACK).forEach(field -> line(depth + 1, "#" + field));
    } else {
      line(depth + 1, "#part: " + part(Kind.PACK));
    }
    below(KeyTree.ROOT.named("parts").flatMap(KeyTree::own).orElseThrow(), depth + 1, true);
  }

  /** The first catalogue part of this kind; where there is none, one written out. */
  private String part(Kind kind) {
    List<Part> parts = catalogue.of(kind);
    return parts.isEmpty()
        ? "{" + String.join(", ", writtenOut(kind)) + "}"
        : quoted(parts.get(0).id());
  }

  /** A part of this kind with its first number. */
  private static List<String> writtenOut(Kind kind) {
    List<String> fields = new ArrayList<>(List.of("kind: " + kind.word()));
    firstNumber(kind).ifPresent(c -> fields.add(c.name() + ": " + Written.like(c).example()));
    return fields;
  }

  private static Optional<Column> firstNumber(Kind kind) {
    return Columns.of(kind).stream()
        .filter(c -> c.isNumber() && !c.name().equals("price_each"))
        .findFirst();
  }

  private static String quoted(String id) {
    return id.matches("[A-Za-z0-9][A-Za-z0-9._-]*") ? id : "'" + id.replace("'", "''") + "'";
  }

  /** One paragraph of explanation, wrapped; its further lines keep its own indentation. */
  private void comment(int depth, String text) {
    String body = text.stripLeading();
    String lead = "  ".repeat(depth) + "# " + " ".repeat(text.length() - body.length());
    for (String line : Wrapped.lines(body, WIDTH - lead.length())) {
      out.append(lead).append(line).append('\n');
    }
  }

  private void line(int depth, String text) {
    out.append("  ".repeat(depth)).append(text).append('\n');
  }
}
