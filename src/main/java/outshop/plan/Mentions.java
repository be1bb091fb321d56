package outshop.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Nearest;
import outshop.input.Shown;
import outshop.input.Tree;

/**
 * The names a plan gives to things, and where it mentions them. Parts, motors, lamps, smoke heaters
 * and bays share one space of names; mentions are checked when the whole plan has been read, so
 * that the order of its sections does not matter.
 */
final class Mentions {
  private static final List<Kind> LOADS = List.of(Kind.BULB, Kind.LED, Kind.SMOKE_HEATER);
  private static final List<Kind> LINKS = List.of(Kind.CONNECTOR, Kind.CABLE);

  /** What a name may stand for. */
  enum Sort {
    PART,
    MOTOR,
    LAMP,
    SMOKE,
    BAY
  }

  /**
   * A thing with a name.
   *
   * @param part of a part that could be read
   */
  private record Thing(Sort sort, Optional<Part> part, int line) {
    boolean is(Predicate<Kind> kind) {
      return sort == Sort.PART && (part.isEmpty() || kind.test(part.get().kind()));
    }
  }

  private record Mention(Key key, String path, Tree.Text text) {}

  private final Problems problems;
  private final Map<String, Thing> things = new LinkedHashMap<>();
  private final Map<String, String> lampKinds = new LinkedHashMap<>();
  private final List<Mention> mentions = new ArrayList<>();

  Mentions(Problems problems) {
    this.problems = problems;
  }

  /** The sort of thing whose names stand under a section; empty where names are no things. */
  static Optional<Sort> sort(String section) {
    return switch (section) {
      case "parts" -> Optional.of(Sort.PART);
      case "locomotive.motors" -> Optional.of(Sort.MOTOR);
      case "locomotive.lamps" -> Optional.of(Sort.LAMP);
      case "locomotive.smoke" -> Optional.of(Sort.SMOKE);
      case "locomotive.bays" -> Optional.of(Sort.BAY);
      default -> Optional.empty();
    };
  }

  /** Gives a name to a thing; an error if another thing has it already. */
  void name(Sort sort, String path, Tree.Entry entry) {
    Thing first = things.putIfAbsent(entry.key(), new Thing(sort, Optional.empty(), entry.line()));
    if (first != null) {
      problems.error(
          entry,
          path,
          entry.key(),
          "the name is taken",
          "another name than that of the %s on line %d"
              .formatted(noun(first.sort()), first.line()));
    }
  }

  /** Says which part a name stands for, once it is read. */
  void part(String name, Part part) {
    things.computeIfPresent(
        name,
        (n, t) -> t.sort() == Sort.PART ? new Thing(t.sort(), Optional.of(part), t.line()) : t);
  }

  /** Says of which kind a lamp is. */
  void lampKind(String name, String kind) {
    lampKinds.put(name, kind);
  }

  void add(Key key, String path, Tree.Text text) {
    mentions.add(new Mention(key, path, text));
  }

  /** Checks every mention against the names of the whole plan. */
  void check() {
    for (Mention mention : mentions) {
      Refers refers = Refers.of(mention.key());
      if (refers.isTerminal()) {
        terminal(mention, refers);
      } else {
        thing(mention, refers);
      }
    }
  }

  private void thing(Mention mention, Refers refers) {
    String name = mention.text().text();
    Thing thing = things.get(name);
    if (thing != null && fits(refers, thing)) {
      return;
    }
    List<String> fitting =
        things.entrySet().stream()
            .filter(e -> fits(refers, e.getValue()))
            .map(Map.Entry::getKey)
            .toList();
    String what = thing == null ? "nothing has this name" : "this is a " + described(thing);
    problems.error(mention.text(), mention.path(), name, what, wanted(refers, name, fitting));
  }

  private static boolean fits(Refers refers, Thing thing) {
    return switch (refers) {
      case BAY -> thing.sort() == Sort.BAY;
      case SMOKE -> thing.sort() == Sort.SMOKE || thing.is(k -> k == Kind.SMOKE_HEATER);
      case LOAD ->
          thing.sort() == Sort.LAMP || thing.sort() == Sort.SMOKE || thing.is(LOADS::contains);
      case RESISTOR -> thing.is(k -> k == Kind.RESISTOR);
      case DECODER -> thing.is(k -> k == Kind.DECODER);
      case LINK -> thing.is(LINKS::contains);
      case NOTHING, OWN, TERMINAL, TERMINAL_OR_COMMON -> true;
    };
  }

  private static String wanted(Refers refers, String name, List<String> fitting) {
    if (fitting.isEmpty()) {
      return refers.words() + ", but the plan has none";
    }
    String hint = Nearest.hint(name, fitting);
    return "the name of " + refers.words() + (hint.isEmpty() ? ": " + Words.some(fitting) : hint);
  }

  private void terminal(Mention mention, Refers refers) {
    String text = mention.text().text();
    boolean plain =
        Terminals.PLAIN.contains(text)
            || (refers == Refers.TERMINAL_OR_COMMON && text.equals("common"));
    if (plain) {
      return;
    }
    int point = text.indexOf('.');
    String owner = point < 0 ? text : text.substring(0, point);
    String terminal = point < 0 ? "" : text.substring(point + 1);
    if (owner.equals(Terminals.SPLICE)) {
      splice(mention, terminal);
    } else if (point < 0 && !things.containsKey(owner)) {
      error(mention, "no terminal has this name", terminalForm(text));
    } else {
      owned(mention, owner, terminal);
    }
  }

  private void splice(Mention mention, String name) {
    if (OwnName.fault(name).isPresent()) {
      error(mention, "the joint between wires has no usable name", "a form such as splice.ground");
    }
  }

  private void owned(Mention mention, String owner, String terminal) {
    Thing thing = things.get(owner);
    if (thing == null && !owner.equals(Terminals.OLD_SPEAKER)) {
      String hint = Nearest.hint(owner, owners());
      error(mention, "nothing that can be wired has the name " + said(owner), form() + hint);
      return;
    }
    if (thing != null && thing.sort() == Sort.PART && thing.part().isEmpty()) {
      return;
    }
    List<String> known = thing == null ? Terminals.ofOldSpeaker() : terminals(owner, thing);
    boolean open = thing != null && thing.part().isPresent();
    if (known.contains(terminal) || (open && Terminals.mayHave(thing.part().get(), terminal))) {
      return;
    }
    if (known.isEmpty()) {
      String what = "a %s has no terminals".formatted(described(thing));
      error(mention, what, form());
      return;
    }
    String what = terminal.isEmpty() ? "the terminal is missing" : "it has no such terminal";
    error(mention, what, Words.some(known.stream().map(t -> owner + "." + t).toList()));
  }

  private List<String> terminals(String name, Thing thing) {
    return switch (thing.sort()) {
      case PART -> Terminals.of(thing.part().orElseThrow());
      case MOTOR -> Terminals.ofMotor();
      case LAMP -> Terminals.ofLamp(lampKinds.getOrDefault(name, "unknown"));
      case SMOKE -> Terminals.ofSmoke();
      case BAY -> List.of();
    };
  }

  private void error(Mention mention, String what, String expected) {
    problems.error(mention.text(), mention.path(), mention.text().text(), what, expected);
  }

  private Set<String> owners() {
    Set<String> owners = new TreeSet<>();
    things.forEach(
        (name, thing) -> {
          boolean wired = thing.sort() != Sort.BAY && thing.is(Terminals::hasAny);
          if (wired || (thing.sort() != Sort.BAY && thing.sort() != Sort.PART)) {
            owners.add(name);
          }
        });
    return owners;
  }

  private static String terminalForm(String text) {
    return form() + Nearest.hint(text, Terminals.PLAIN);
  }

  private static String form() {
    return "NAME.TERMINAL, splice.NAME, " + Words.either(Terminals.PLAIN);
  }

  private static String said(String name) {
    return "\"" + Shown.text(name) + "\"";
  }

  private static String described(Thing thing) {
    return thing.part().isPresent() ? thing.part().get().kind().word() : noun(thing.sort());
  }

  private static String noun(Sort sort) {
    return switch (sort) {
      case PART -> "part";
      case MOTOR -> "motor";
      case LAMP -> "lamp";
      case SMOKE -> "smoke heater";
      case BAY -> "bay";
    };
  }
}
