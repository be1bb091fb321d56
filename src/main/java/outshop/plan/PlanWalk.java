package outshop.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Nearest;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.input.Shown;
import outshop.input.Tree;
import outshop.plan.Plan.Stated;

/** Walks through a plan's tree along the keys it may hold, and puts the plan together. */
final class PlanWalk {
  private static final String FORMAT = "outshop_plan";
  private static final String PARTS = "parts.*";

  /** Names in one section, or rows in one list: far more than any locomotive has. */
  private static final int MOST = 100;

  /** Each switch doubles the states that a plan is followed through. */
  private static final int MOST_SWITCHES = 8;

  private final Problems problems;
  private final Mentions mentions;
  private final Values values;
  private final PartReader partReader;
  private final PlanDraft draft = new PlanDraft();

  PlanWalk(Problems problems, Catalogue catalogue) {
    this.problems = problems;
    this.mentions = new Mentions(problems);
    Numbers numbers = new Numbers(problems);
    this.values = new Values(problems, numbers, mentions);
    this.partReader = new PartReader(catalogue, problems, numbers, values);
  }

  /** The places for parts that the plan leaves open. */
  List<OpenPart> open() {
    return List.copyOf(partReader.open());
  }

  Plan plan(Tree.Node root) {
    if (root instanceof Tree.Fields fields) {
      format(fields);
      section(KeyTree.ROOT, "", fields);
      draft.dutyProblem().ifPresent(problems::add);
      switches();
      for (String lamp : draft.names("locomotive.lamps")) {
        draft
            .at("locomotive.lamps." + lamp + ".kind")
            .ifPresent(kind -> mentions.lampKind(lamp, kind.texts().get(0)));
      }
      mentions.check();
    } else {
      String found = root instanceof Tree.Text text ? text.text() : "";
      problems.error(root, "", found, "this is no plan", "lines of the form \"key: value\"");
    }
    return draft.plan(problems.file());
  }

  /** The version of the format comes first of all: without it nothing else can be relied on. */
  private void format(Tree.Fields fields) {
    Optional<Tree.Entry> entry = fields.find(FORMAT);
    if (entry.isEmpty()) {
      Place whole = Place.whole(problems.file());
      String expected = "\"outshop_plan: 1\" as the first line";
      problems.add(Problem.error(whole, "", "the key outshop_plan is missing", expected));
      return;
    }
    String found = entry.get().value() instanceof Tree.Text text ? text.text() : "";
    if (!found.equals("1")) {
      String what = "this version of the format is not known here";
      problems.error(entry.get().value(), FORMAT, found, what, "\"outshop_plan: 1\"");
      return;
    }
    draft.state(FORMAT, new Stated(List.of(), 1, problems.place(entry.get(), FORMAT)));
  }

  private void section(KeyTree at, String path, Tree.Fields fields) {
    if (at.own().isPresent() && fields.entries().size() > MOST) {
      tooMany(path, fields.entries().get(MOST).value(), fields.entries().size());
      return;
    }
    for (Tree.Entry entry : fields.entries()) {
      String below = path.isEmpty() ? entry.key() : path + "." + entry.key();
      Optional<KeyTree> named = at.named(entry.key());
      if (named.isPresent()) {
        entry(named.get(), below, entry);
      } else if (at.own().isPresent()) {
        own(at, path, below, entry);
      } else {
        unknown(at, path, entry);
      }
    }
  }

  private void switches() {
    List<Fitted> switches = draft.parts(Kind.SWITCH);
    if (switches.size() > MOST_SWITCHES) {
      Place place = switches.get(MOST_SWITCHES).place();
      String found = Integer.toString(switches.size());
      String what = "more switches than can be followed in all their positions";
      problems.add(Problem.error(place, found, what, "no more than " + MOST_SWITCHES));
    }
  }

  private void tooMany(String path, Tree.Node at, int found) {
    String expected = "no more than " + MOST + " of a kind";
    problems.error(at, path, Integer.toString(found), "more than a plan can hold", expected);
  }

  /** An entry whose key is a name of the user's own. */
  private void own(KeyTree section, String path, String below, Tree.Entry entry) {
    Optional<String> fault = OwnName.fault(entry.key());
    if (fault.isPresent()) {
      problems.error(entry, path, entry.key(), fault.get(), OwnName.wanted(entry.key()));
      return;
    }
    if (path.equals("outputs") && !entry.key().matches("out-[1-9][0-9]?")) {
      String wanted = "the output's terminal at the decoder: out-1, out-2 and so on";
      problems.error(entry, path, entry.key(), "no output has this name", wanted);
      return;
    }
    Mentions.sort(section.path()).ifPresent(s -> mentions.name(s, below, entry));
    KeyTree at = section.own().orElseThrow();
    if (at.isSection()) {
      draft.state(below, new Stated(List.of(), 0, problems.place(entry, below)));
    }
    entry(at, below, entry);
  }

  private void entry(KeyTree at, String path, Tree.Entry entry) {
    if (at.isSection()) {
      subsection(at, path, entry);
      return;
    }
    Key key = at.key().orElseThrow();
    switch (key.type()) {
      case PART -> part(at, path, entry);
      case ROWS -> rows(at, path, entry);
      default -> {
        if (!path.equals(FORMAT)) {
          values.read(key, path, entry).ifPresent(s -> draft.state(path, s));
        }
      }
    }
  }

  private void subsection(KeyTree at, String path, Tree.Entry entry) {
    if (entry.value() instanceof Tree.Fields fields) {
      section(at, path, fields);
    } else if (entry.value() instanceof Tree.Text text) {
      noSection(at, path, text);
    } else {
      String expected = "a section with " + keysOf(at);
      problems.error(entry.value(), path, "", "a list stands here", expected);
    }
  }

  private void noSection(KeyTree at, String path, Tree.Text text) {
    int colon = text.text().indexOf(':');
    if (colon > 0) {
      String mended = Shown.text(text.text().replaceFirst(":", ": "));
      String what = "no space after the colon";
      problems.error(text, path, text.text(), what, "\"" + mended + "\"");
    } else if (!text.isBlank()) {
      String expected = "a section with " + keysOf(at);
      problems.error(text, path, text.text(), "a single value stands here", expected);
    }
  }

  private static String keysOf(KeyTree at) {
    return at.own().isPresent()
        ? "names of your own, and their keys below each"
        : "the keys " + Words.either(at.names());
  }

  private void unknown(KeyTree at, String path, Tree.Entry entry) {
    String hint = Nearest.hint(entry.key(), at.names());
    String expected = hint.isEmpty() ? Words.either(at.names()) + elsewhere(entry) : "a key" + hint;
    problems.error(entry, path, entry.key(), "there is no such key here", expected);
  }

  /** Where a key of this name does belong, if it is one of another section. */
  private static String elsewhere(Tree.Entry entry) {
    List<String> homes =
        Keys.all().stream()
            .filter(k -> k.name().equals(entry.key()))
            .map(k -> k.path().replace("*", "NAME"))
            .toList();
    return homes.isEmpty() ? "" : " (there is " + Words.either(homes) + ")";
  }

  private void part(KeyTree at, String path, Tree.Entry entry) {
    boolean own = at.path().equals(PARTS);
    if (own && entry.value() instanceof Tree.Fields fields) {
      for (Tree.Entry field : fields.entries()) {
        at.named(field.key()).ifPresent(k -> entry(k, path + "." + field.key(), field));
      }
    }
    String name = own ? entry.key() : path;
    Optional<Kind> only = own ? Optional.empty() : Optional.of(Kind.WIRE);
    Set<String> alsoHere = Set.copyOf(at.names());
    PartReader.Slot slot = new PartReader.Slot(path, name, only, alsoHere::contains);
    Optional<Part> part = partReader.read(slot, entry);
    if (part.isPresent()) {
      Place place = problems.place(entry, path);
      draft.state(path, new Stated(List.of(part.get().id()), 0, place));
      draft.fit(name, part.get(), place);
      mentions.part(name, part.get());
    }
  }

  private void rows(KeyTree at, String path, Tree.Entry entry) {
    if (entry.value() instanceof Tree.Text text && text.isBlank()) {
      problems.note(text, path, Values.BLANK, "rows, or [] where there are none");
      return;
    }
    if (!(entry.value() instanceof Tree.Rows rows)) {
      problems.error(entry.value(), path, "", "no list stands here", rowForm(at));
      return;
    }
    if (rows.items().size() > MOST) {
      tooMany(path, rows.items().get(MOST), rows.items().size());
      return;
    }
    draft.state(path, new Stated(List.of(), 0, problems.place(entry, path)));
    for (int i = 0; i < rows.items().size(); i++) {
      row(at, path + "." + (i + 1), rows.items().get(i));
    }
  }

  private void row(KeyTree at, String path, Tree.Node item) {
    if (!(item instanceof Tree.Fields fields)) {
      problems.error(item, path, "", "this list item is no row", rowForm(at));
      return;
    }
    draft.state(path, new Stated(List.of(), 0, problems.place(item, path)));
    section(at, path, fields);
    Key rows = at.key().orElseThrow();
    for (String needed : Rows.needed(rows)) {
      if (fields.find(needed).isEmpty()) {
        Key key = Keys.require(rows.path() + "." + needed);
        String expected = "\"" + needed + ": " + key.example() + "\" or the like";
        problems.error(item, path, "", "the row has no " + needed, expected);
      }
    }
    differ(path, "from", "to");
    differ(path, "one", "other");
  }

  /** A row about two terminals names two. */
  private void differ(String path, String first, String second) {
    Optional<Stated> one = draft.at(path + "." + first);
    Optional<Stated> other = draft.at(path + "." + second);
    if (one.isPresent() && other.isPresent() && one.get().texts().equals(other.get().texts())) {
      String found = other.get().texts().get(0);
      String what = "both ends are the same terminal";
      problems.add(Problem.error(other.get().place(), found, what, "two terminals"));
    }
  }

  private static String rowForm(KeyTree at) {
    Key rows = at.key().orElseThrow();
    List<String> fields =
        Rows.needed(rows).stream()
            .map(n -> n + ": " + Keys.require(rows.path() + "." + n).example())
            .toList();
    return "rows such as \"- {" + String.join(", ", fields) + "}\"";
  }
}
