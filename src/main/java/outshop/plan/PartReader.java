package outshop.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Nearest;
import outshop.input.Shown;
import outshop.input.Tree;
import outshop.units.Origin;

/**
 * Reads a part as a plan gives it: a catalogue id; a map with {@code part:} and columns that
 * override the catalogue's; or a map with {@code kind:} and the part's own columns.
 */
final class PartReader {
  static final String PART = "part";
  static final String KIND = "kind";

  /** Where a part is one row's alone. */
  private static final String ROWS = "wiring.wires.";

  /** Every table begins with the same columns: id, maker, title, price_each, origin, note. */
  private static final int OF_ALL = 6;

  private static final Pattern FREE_WORD = Pattern.compile("[a-z0-9][a-z0-9._-]*");

  private final Catalogue catalogue;
  private final Problems problems;
  private final Numbers numbers;
  private final Values values;
  private final List<OpenPart> open = new ArrayList<>();

  PartReader(Catalogue catalogue, Problems problems, Numbers numbers, Values values) {
    this.catalogue = catalogue;
    this.problems = problems;
    this.numbers = numbers;
    this.values = values;
  }

  /**
   * Where a part stands, and what it may be.
   *
   * @param path its full path in the plan
   * @param name the name it has in the plan, the id of a part without one
   * @param only the kind it must be of, if only one will do
   * @param alsoHere which keys of the map are no business of the part itself
   */
  record Slot(String path, String name, Optional<Kind> only, Predicate<String> alsoHere) {
    /** The kind it must be of, or that its name speaks of. */
    Optional<Kind> kind() {
      return only.or(() -> OpenPart.kindOf(name));
    }
  }

  /** What is being put together of one part: what stands in the map, over what was there before. */
  private record Draft(
      Kind kind,
      Map<String, Double> numbers,
      Map<String, String> words,
      Map<String, String> notes) {
    static Draft of(Kind kind) {
      return new Draft(kind, new LinkedHashMap<>(), new LinkedHashMap<>(), Map.of());
    }

    static Draft of(Part part) {
      return new Draft(
          part.kind(),
          new LinkedHashMap<>(part.numbers()),
          new LinkedHashMap<>(part.words()),
          part.notes());
    }
  }

  /** The places that were left open so far. */
  List<OpenPart> open() {
    return open;
  }

  /** The part at an entry; empty if none is stated or any will do, or after an error. */
  Optional<Part> read(Slot slot, Tree.Entry entry) {
    if (entry.value() instanceof Tree.Text text) {
      if (isAny(text)) {
        leaveOpen(slot, text, slot.kind(), List.of());
        return Optional.empty();
      }
      if (!text.isBlank()) {
        return find(slot, slot.path(), text);
      }
      problems.note(
          text, slot.path(), "no part is written here, so none counts as chosen", idForm());
      return Optional.empty();
    }
    if (entry.value() instanceof Tree.Fields fields) {
      return read(slot, fields);
    }
    problems.error(entry.value(), slot.path(), "", "a list stands here", idForm());
    return Optional.empty();
  }

  private Optional<Part> read(Slot slot, Tree.Fields fields) {
    Optional<Tree.Entry> part = fields.find(PART);
    Optional<Tree.Entry> kind = fields.find(KIND);
    if (part.isPresent() && part.get().value() instanceof Tree.Text text && isAny(text)) {
      Optional<Kind> of = kind.isPresent() ? statedKind(slot, kind.get()) : slot.kind();
      leaveOpen(slot, text, of, columns(slot, fields));
      return Optional.empty();
    }
    if (part.isPresent() && kind.isPresent()) {
      String path = slot.path() + "." + KIND;
      String expected = "part: for a part of the catalogue, or kind: for one written out here";
      problems.error(kind.get(), path, "", "part: and kind: stand side by side", expected);
      return Optional.empty();
    }
    if (part.isPresent()) {
      return overridden(slot, part.get(), fields);
    }
    if (kind.isPresent()) {
      return writtenOut(slot, kind.get(), fields);
    }
    problems.error(fields, slot.path(), "", "neither part: nor kind: stands here", idForm());
    return Optional.empty();
  }

  private boolean isAny(Tree.Text text) {
    return text.text().equals(OpenPart.ANY) && catalogue.find(OpenPart.ANY).isEmpty();
  }

  /** Notes that any part of a kind will do. */
  private void leaveOpen(Slot slot, Tree.Text any, Optional<Kind> kind, List<Tree.Entry> stated) {
    boolean row = slot.path().startsWith(ROWS);
    if (row || kind.isEmpty()) {
      String what = row ? "no part can be left open here" : "any part will do, but of which kind?";
      String named = "the kind beside it, {kind: connector, part: any}, or ";
      problems.error(any, slot.path(), any.text(), what, (row ? "" : named) + idForm());
      return;
    }
    problems.note(
        any,
        slot.path(),
        "any part will do here, so none counts as chosen",
        "outshop choose finds which work, or " + idForm());
    Draft draft = Draft.of(kind.get());
    for (Tree.Entry entry : stated) {
      if (entry.key().equals("id")) {
        keepsItsId(slot, entry);
      } else {
        column(slot, draft, entry);
      }
    }
    Origin unstated = Origin.ASSUMED;
    Origin origin = origin(draft, unstated);
    open.add(
        new OpenPart(
            slot.name(),
            kind.get(),
            draft.numbers(),
            draft.words(),
            origin == unstated ? Optional.empty() : Optional.of(origin),
            problems.place(any, slot.path())));
  }

  private Optional<Part> overridden(Slot slot, Tree.Entry at, Tree.Fields fields) {
    String path = slot.path() + "." + PART;
    if (!(at.value() instanceof Tree.Text text) || text.text().isBlank()) {
      problems.error(at.value(), path, "", "no id stands here", "an id of the catalogue");
      return Optional.empty();
    }
    Optional<Part> base = find(slot, path, text);
    if (base.isEmpty()) {
      return base;
    }
    Part whole = base.get();
    Draft draft = Draft.of(whole);
    boolean changed = false;
    for (Tree.Entry entry : columns(slot, fields)) {
      if (entry.key().equals("id")) {
        keepsItsId(slot, entry);
      } else {
        changed |= column(slot, draft, entry);
      }
    }
    return Optional.of(
        changed ? part(draft, whole.id(), origin(draft, whole.origin()), slot, at) : whole);
  }

  private void keepsItsId(Slot slot, Tree.Entry entry) {
    String what = "a part of the catalogue keeps its id";
    problems.error(entry, slot.path() + ".id", "", what, "part: alone");
  }

  private Optional<Kind> statedKind(Slot slot, Tree.Entry at) {
    String path = slot.path() + "." + KIND;
    List<String> allowed = slot.only().map(k -> List.of(k.word())).orElseGet(Kind::words);
    if (!(at.value() instanceof Tree.Text text) || text.isBlank()) {
      problems.error(at.value(), path, "", "no kind stands here", Words.either(allowed));
      return Optional.empty();
    }
    return values.word(allowed, path, text) ? Kind.of(text.text()) : Optional.empty();
  }

  private Optional<Part> writtenOut(Slot slot, Tree.Entry at, Tree.Fields fields) {
    Optional<Kind> kind = statedKind(slot, at);
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    Draft draft = Draft.of(kind.get());
    for (Tree.Entry entry : columns(slot, fields)) {
      if (column(slot, draft, entry) && entry.key().equals("id")) {
        idIsFree(slot, draft.words().get("id"), entry);
      }
    }
    String id = draft.words().getOrDefault("id", slot.name());
    return Optional.of(part(draft, id, origin(draft, Origin.PLAN), slot, at));
  }

  private void idIsFree(Slot slot, String id, Tree.Entry entry) {
    if (catalogue.find(id).isPresent()) {
      String expected = "another id, or \"part: " + Shown.text(id) + "\" to use the catalogue's";
      problems.error(
          entry.value(), slot.path() + ".id", id, "the catalogue has a part of this id", expected);
    }
  }

  private Part part(Draft draft, String id, Origin origin, Slot slot, Tree.Entry at) {
    draft.words().remove("id");
    return new Part(
        draft.kind(),
        id,
        draft.numbers(),
        draft.words(),
        draft.notes(),
        origin,
        problems.place(at, slot.path()));
  }

  private static Origin origin(Draft draft, Origin otherwise) {
    return switch (draft.words().getOrDefault("origin", "")) {
      case "data-sheet" -> Origin.DATA_SHEET;
      case "measured" -> Origin.MEASURED;
      case "guess" -> Origin.GUESS;
      default -> otherwise;
    };
  }

  private static List<Tree.Entry> columns(Slot slot, Tree.Fields fields) {
    List<Tree.Entry> columns = new ArrayList<>();
    for (Tree.Entry entry : fields.entries()) {
      boolean own = entry.key().equals(PART) || entry.key().equals(KIND);
      if (!own && !slot.alsoHere().test(entry.key())) {
        columns.add(entry);
      }
    }
    return columns;
  }

  /** Reads one column into the draft; says whether it holds something now. */
  private boolean column(Slot slot, Draft draft, Tree.Entry entry) {
    String path = slot.path() + "." + Shown.text(entry.key());
    Optional<Column> found = Columns.find(draft.kind(), entry.key());
    if (found.isEmpty()) {
      unknownColumn(slot, draft.kind(), path, entry);
      return false;
    }
    Column column = found.get();
    if (entry.value() instanceof Tree.Text text && text.isBlank()) {
      problems.note(text, path, Values.BLANK, "a value, or the key left out");
      return false;
    }
    if (column.type() == Column.Type.WORDS) {
      return words(column, draft, path, entry);
    }
    if (!(entry.value() instanceof Tree.Text text)) {
      String form = "one value, such as " + example(column);
      problems.error(entry.value(), path, "", "a list or section stands here", form);
      return false;
    }
    return value(column, draft, path, text);
  }

  private boolean value(Column column, Draft draft, String path, Tree.Text text) {
    if (column.isNumber()) {
      OptionalDouble number = numbers.read(column, path, text);
      number.ifPresent(n -> draft.numbers().put(column.name(), n));
      return number.isPresent();
    }
    boolean good =
        column.type() == Column.Type.WORD
            ? values.word(column.words(), path, text)
            : !text.text().isBlank();
    if (good) {
      draft.words().put(column.name(), text.text().strip());
    } else if (column.type() == Column.Type.TEXT) {
      problems.error(text, path, "", "the text is empty", "words, such as " + column.example());
    }
    return good;
  }

  private boolean words(Column column, Draft draft, String path, Tree.Entry entry) {
    List<Tree.Text> items = wordItems(column, path, entry.value());
    items.removeIf(item -> item.text().isBlank());
    if (items.isEmpty()) {
      String form = "words, such as " + column.example();
      problems.error(entry.value(), path, "", "no words stand here", form);
      return false;
    }
    List<String> good = new ArrayList<>();
    for (Tree.Text item : items) {
      if (wordFits(column, path, item)) {
        good.add(item.text());
      }
    }
    draft.words().put(column.name(), String.join(" ", good));
    return good.size() == items.size();
  }

  /** The words of a list, or of one text with spaces between them. */
  private List<Tree.Text> wordItems(Column column, String path, Tree.Node value) {
    List<Tree.Text> items = new ArrayList<>();
    if (value instanceof Tree.Rows rows) {
      for (Tree.Node item : rows.items()) {
        if (item instanceof Tree.Text text) {
          items.add(text);
        } else {
          problems.error(item, path, "", "this list item is no word", column.example());
        }
      }
    } else if (value instanceof Tree.Text text) {
      for (String word : text.text().strip().split("\\s+")) {
        items.add(new Tree.Text(word, text.quoted(), text.line(), text.column()));
      }
    }
    return items;
  }

  private boolean wordFits(Column column, String path, Tree.Text item) {
    if (!column.words().contains("*")) {
      return values.word(column.words(), path, item);
    }
    boolean fits = FREE_WORD.matcher(item.text()).matches();
    if (!fits) {
      String expected = "lower case letters, digits and -, such as " + column.example();
      problems.error(item, path, item.text(), "no such word", expected);
    }
    return fits;
  }

  private void unknownColumn(Slot slot, Kind kind, String path, Tree.Entry entry) {
    List<String> valid = new ArrayList<>();
    Columns.of(kind).forEach(c -> valid.add(c.name()));
    KeyTree.ROOT.named("parts").flatMap(KeyTree::own).map(KeyTree::names).orElse(List.of()).stream()
        .filter(slot.alsoHere())
        .forEach(valid::add);
    String hint = Nearest.hint(entry.key(), valid);
    String expected =
        hint.isEmpty()
            ? "one of " + String.join(", ", valid.subList(OF_ALL, valid.size()))
            : "a column of the %s table".formatted(kind.word());
    problems.error(
        entry, path, entry.key(), "a %s has no such key".formatted(kind.word()), expected + hint);
  }

  private static String example(Column column) {
    return column.isNumber() ? Written.like(column).example() : column.example();
  }

  private Optional<Part> find(Slot slot, String path, Tree.Text text) {
    String id = text.text();
    Optional<Part> part = catalogue.find(id);
    if (part.isEmpty()) {
      problems.error(text, path, id, "the catalogue has no part of this id", nearestIds(slot, id));
      return part;
    }
    if (slot.only().isPresent() && part.get().kind() != slot.only().get()) {
      String what = "this part is a " + part.get().kind().word();
      problems.error(text, path, id, what, "a " + slot.only().get().word() + hintOf(slot, id));
      return Optional.empty();
    }
    return part;
  }

  private String hintOf(Slot slot, String id) {
    return Nearest.hint(id, ids(slot));
  }

  private String nearestIds(Slot slot, String id) {
    List<String> fitting = ids(slot);
    if (fitting.isEmpty()) {
      return idForm();
    }
    String hint = Nearest.hint(id, fitting);
    if (!hint.isEmpty()) {
      return "an id of the catalogue" + hint;
    }
    int shown = Math.min(4, fitting.size());
    String more = fitting.size() > shown ? " (and %d more)".formatted(fitting.size() - shown) : "";
    return "an id of the catalogue, such as " + Words.either(fitting.subList(0, shown)) + more;
  }

  /** The ids that may be meant: of the kind the slot must hold, or that its name begins with. */
  private List<String> ids(Slot slot) {
    List<String> all = new ArrayList<>();
    List<String> fitting = new ArrayList<>();
    for (Part part : catalogue.all()) {
      all.add(part.id());
      boolean fits =
          slot.only().isPresent()
              ? part.kind() == slot.only().get()
              : slot.name().startsWith(part.kind().word());
      if (fits) {
        fitting.add(part.id());
      }
    }
    return fitting.isEmpty() && slot.only().isEmpty() ? all : fitting;
  }

  private static String idForm() {
    return "an id of the catalogue, or a section with part: or kind:";
  }
}
