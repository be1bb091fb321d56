package outshop.rulecases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import outshop.input.Tree;

/**
 * One example of a rule: what it changes in the base plan, and what the rule must then answer.
 *
 * @param change by path
 * @param expect an outcome's words, or {@code silent} where the rule must say nothing
 * @param says a piece of the headline, if given
 * @param at the name of the place whose answer is meant, if given; else the rule's worst answer is
 */
record Example(
    String rule,
    String name,
    Map<String, Tree.Node> change,
    String expect,
    Optional<String> says,
    Optional<String> at) {

  static final Path RULES = Path.of("rules");

  /** Every example of every rule. */
  static List<Example> all() {
    List<Example> examples = new ArrayList<>();
    try (Stream<Path> files = Files.walk(RULES)) {
      for (Path file : files.filter(p -> p.toString().endsWith(".cases.yaml")).sorted().toList()) {
        examples.addAll(in(file));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return examples;
  }

  private static List<Example> in(Path file) throws IOException {
    String rule = RULES.relativize(file).toString().replace('\\', '/').replace(".cases.yaml", "");
    Tree.Read read = Tree.read(file.toString(), Files.readAllBytes(file));
    if (!read.problems().isEmpty()) {
      throw new IllegalStateException(read.problems().toString());
    }
    List<Example> examples = new ArrayList<>();
    for (Tree.Node node : ((Tree.Rows) read.root().orElseThrow()).items()) {
      Tree.Fields fields = (Tree.Fields) node;
      for (Tree.Entry entry : fields.entries()) {
        if (!List.of("name", "change", "expect", "says", "at").contains(entry.key())) {
          throw new IllegalStateException(
              file + ":" + entry.line() + ": no key \"" + entry.key() + "\"");
        }
      }
      examples.add(
          new Example(
              rule,
              text(fields, "name").orElseThrow(),
              changes(fields),
              text(fields, "expect").orElseThrow(),
              text(fields, "says"),
              text(fields, "at")));
    }
    return examples;
  }

  private static Map<String, Tree.Node> changes(Tree.Fields fields) {
    Map<String, Tree.Node> changes = new LinkedHashMap<>();
    fields
        .find("change")
        .ifPresent(
            entry -> {
              for (Tree.Entry change : ((Tree.Fields) entry.value()).entries()) {
                changes.put(change.key(), change.value());
              }
            });
    return changes;
  }

  private static Optional<String> text(Tree.Fields fields, String key) {
    return fields.find(key).map(e -> ((Tree.Text) e.value()).text());
  }

  @Override
  public String toString() {
    return rule + ": " + name;
  }
}
