package outshop.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The keys of a plan as they nest; what stands under a section is found level by level. */
final class KeyTree {
  static final KeyTree ROOT = load();

  private final String path;
  private final Map<String, KeyTree> children = new LinkedHashMap<>();
  private Optional<Key> key = Optional.empty();

  private KeyTree(String path) {
    this.path = path;
  }

  private static KeyTree load() {
    KeyTree root = new KeyTree("");
    for (Key key : Keys.all()) {
      KeyTree at = root;
      for (String part : key.path().split("\\.")) {
        String below = at.path.isEmpty() ? part : at.path + "." + part;
        at = at.children.computeIfAbsent(part, p -> new KeyTree(below));
      }
      at.key = Optional.of(key);
    }
    return root;
  }

  /** The pattern of this place, such as {@code locomotive.motors.*}; empty for the whole plan. */
  String path() {
    return path;
  }

  /** What may stand here, where it is a value. */
  Optional<Key> key() {
    return key;
  }

  /** Whether what stands here is a section with keys of its own. */
  boolean isSection() {
    return key.isEmpty();
  }

  /** The place below that is named by this very key. */
  Optional<KeyTree> named(String name) {
    return name.equals("*") ? Optional.empty() : Optional.ofNullable(children.get(name));
  }

  /** The place below that any name of the user's own leads to. */
  Optional<KeyTree> own() {
    return Optional.ofNullable(children.get("*"));
  }

  /** The fixed keys below, in their order. */
  List<String> names() {
    List<String> names = new ArrayList<>(children.keySet());
    names.remove("*");
    return names;
  }

  /** The places below by their fixed keys, in their order. */
  List<KeyTree> below() {
    return names().stream().map(children::get).toList();
  }
}
