package outshop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import outshop.input.Nearest;
import outshop.input.Tree;
import outshop.plan.Plan.Stated;

/** Reads what stands at one key: a text, a word, a number, a name or several. */
final class Values {
  /** What is said of a key with nothing behind it. */
  static final String BLANK = "nothing is written here, so it counts as not known";

  private static final String NONE = "none";

  private final Problems problems;
  private final Numbers numbers;
  private final Mentions mentions;

  Values(Problems problems, Numbers numbers, Mentions mentions) {
    this.problems = problems;
    this.numbers = numbers;
    this.mentions = mentions;
  }

  /** What is stated by an entry; empty if nothing is, or after an error. */
  Optional<Stated> read(Key key, String path, Tree.Entry entry) {
    if (entry.value() instanceof Tree.Text text && text.isBlank()) {
      problems.note(text, path, BLANK, "a value, or the key left out");
      return Optional.empty();
    }
    if (key.type() == Key.Type.NAMES) {
      return names(key, path, entry);
    }
    if (!(entry.value() instanceof Tree.Text text)) {
      String what = (entry.value() instanceof Tree.Rows ? "a list" : "a section") + " stands here";
      problems.error(entry.value(), path, "", what, "one value, such as " + key.example());
      return Optional.empty();
    }
    return switch (key.type()) {
      case TEXT -> text(key, path, entry, text);
      case WORD -> word(key.words(), path, text) ? one(path, entry, text) : Optional.empty();
      case QUANTITY, QUANTITY_OR_NONE, COUNT -> number(key, path, entry, text);
      case NAME -> name(key, path, entry, text);
      case NAMES, PART, ROWS -> throw new IllegalArgumentException(key.path() + " is no value");
    };
  }

  /** Whether a text is one of the words, with an error if it is not. */
  boolean word(List<String> words, String path, Tree.Text text) {
    if (words.contains(text.text())) {
      return true;
    }
    String hint = Nearest.hint(text.text(), words);
    problems.error(text, path, text.text(), "no such word", Words.either(words) + hint);
    return false;
  }

  private Optional<Stated> one(String path, Tree.Entry entry, Tree.Text text) {
    return stated(path, entry, List.of(text.text()));
  }

  private Optional<Stated> stated(String path, Tree.Entry entry, List<String> texts) {
    return Optional.of(new Stated(texts, 0, problems.place(entry, path)));
  }

  private Optional<Stated> text(Key key, String path, Tree.Entry entry, Tree.Text text) {
    if (text.text().isBlank()) {
      problems.error(text, path, "", "the text is empty", "words, such as " + key.example());
      return Optional.empty();
    }
    String folded = text.text().strip().replaceAll("\\s+", " ");
    if (folded.chars().anyMatch(Character::isISOControl)) {
      problems.error(
          text,
          path,
          folded,
          "a control character stands in the text",
          "letters, digits and signs that can be seen");
      return Optional.empty();
    }
    return stated(path, entry, List.of(folded));
  }

  private Optional<Stated> number(Key key, String path, Tree.Entry entry, Tree.Text text) {
    OptionalDouble value = numbers.read(key, path, text);
    return value.isEmpty()
        ? Optional.empty()
        : Optional.of(new Stated(List.of(), value.getAsDouble(), problems.place(entry, path)));
  }

  private Optional<Stated> name(Key key, String path, Tree.Entry entry, Tree.Text text) {
    if (text.text().isBlank()) {
      problems.error(text, path, "", "the name is empty", "a name, such as " + key.example());
      return Optional.empty();
    }
    if (Refers.of(key) != Refers.NOTHING) {
      mentions.add(key, path, text);
    }
    return one(path, entry, text);
  }

  private Optional<Stated> names(Key key, String path, Tree.Entry entry) {
    List<Tree.Text> items = new ArrayList<>();
    if (entry.value() instanceof Tree.Text text) {
      items.add(text);
    } else if (entry.value() instanceof Tree.Rows rows && !rows.items().isEmpty()) {
      for (Tree.Node item : rows.items()) {
        if (item instanceof Tree.Text text && !text.text().isBlank()) {
          items.add(text);
        } else {
          problems.error(item, path, "", "this list item is no name", listForm(key));
        }
      }
    } else {
      boolean empty = entry.value() instanceof Tree.Rows;
      String what = empty ? "an empty list says nothing" : "a section stands here";
      problems.error(entry.value(), path, "", what, listForm(key) + ", or the key left out");
    }
    List<String> accepted = distinct(key, path, items);
    return accepted.isEmpty() ? Optional.empty() : stated(path, entry, accepted);
  }

  private List<String> distinct(Key key, String path, List<Tree.Text> items) {
    List<String> names = new ArrayList<>();
    for (Tree.Text item : items) {
      String name = item.text();
      if (names.contains(name)) {
        problems.error(item, path, name, "the name stands twice in the list", "each name once");
      } else if (name.equals(NONE) && items.size() > 1) {
        problems.error(item, path, name, "none stands beside names", "[none] alone, or the names");
      } else if (name.equals(NONE) || isUsable(key, path, item)) {
        names.add(name);
      }
    }
    return names;
  }

  private boolean isUsable(Key key, String path, Tree.Text item) {
    if (!key.words().isEmpty()) {
      List<String> words = new ArrayList<>(key.words());
      words.add(NONE);
      return word(words, path, item);
    }
    if (Refers.of(key) == Refers.OWN) {
      Optional<String> fault = OwnName.fault(item.text());
      fault.ifPresent(f -> problems.error(item, path, item.text(), f, OwnName.wanted(item.text())));
      return fault.isEmpty();
    }
    mentions.add(key, path, item);
    return true;
  }

  private static String listForm(Key key) {
    return "a list of names, such as "
        + key.example()
        + (key.example().contains(NONE) ? "" : ", or [none]");
  }
}
