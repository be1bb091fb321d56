package outshop.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import outshop.input.Tree;

/**
 * Says in words what an example changes in the base plan: {@code parts.receiver.input_max_volts: 14
 * V} is "receiver: input max volts 14 V", as reports call the value.
 */
final class ChangeWords {
  private static final String REMOVE = "(remove)";

  /** What stands before the user's own names; the names themselves say the rest. */
  private static final Map<String, String> OWNERS =
      Map.of(
          "locomotive.motors", "motor",
          "locomotive.lamps", "lamp",
          "locomotive.bays", "bay",
          "locomotive.smoke", "smoke heater",
          "outputs", "output",
          "parts", "");

  private ChangeWords() {}

  static String of(String path, Tree.Node to) {
    for (Map.Entry<String, String> owner : OWNERS.entrySet()) {
      if (path.startsWith(owner.getKey() + ".")) {
        String rest = path.substring(owner.getKey().length() + 1);
        return named(owner.getValue(), rest.split("\\.", 2), to);
      }
    }
    String words = plain(path.replaceFirst("^locomotive\\.", ""));
    return isRemoved(to) ? words + " not stated" : words + " " + value(to);
  }

  /** Of something with a name of its own: the whole of it, or one value. */
  private static String named(String owner, String[] nameAndKey, Tree.Node to) {
    String thing = owner.isEmpty() ? nameAndKey[0] : owner + " " + nameAndKey[0];
    if (nameAndKey.length == 1) {
      return isRemoved(to) ? "no " + thing : thing + " put in" + whole(to);
    }
    String key = plain(nameAndKey[1]);
    return isRemoved(to)
        ? thing + ": " + key + " not stated"
        : thing + ": " + key + " " + value(to);
  }

  private static String whole(Tree.Node to) {
    String words = value(to);
    return words.isEmpty() ? "" : " (" + words + ")";
  }

  private static boolean isRemoved(Tree.Node to) {
    return to instanceof Tree.Text text && text.text().equals(REMOVE);
  }

  private static String value(Tree.Node to) {
    if (to instanceof Tree.Text text) {
      return text.text();
    }
    List<String> words = new ArrayList<>();
    if (to instanceof Tree.Fields fields) {
      for (Tree.Entry entry : fields.entries()) {
        words.add(plain(entry.key()) + " " + value(entry.value()));
      }
    } else if (to instanceof Tree.Rows rows) {
      for (Tree.Node item : rows.items()) {
        words.add(item instanceof Tree.Fields wire ? wire(wire) : value(item));
      }
    }
    return String.join(", ", words);
  }

  /** A row of the wire list is its two ends; any other row is what it holds. */
  private static String wire(Tree.Fields row) {
    boolean ends = row.find("from").isPresent() && row.find("to").isPresent();
    return ends
        ? value(row.find("from").get().value()) + " to " + value(row.find("to").get().value())
        : value(row);
  }

  /** Points and underscores are spaces to a reader. */
  private static String plain(String path) {
    return String.join(" ", Arrays.asList(path.split("\\."))).replace('_', ' ');
  }
}
