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
import outshop.catalogue.Catalogue;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.input.Tree;
import outshop.plan.PlanReader;
import outshop.ranking.Ranking;

/**
 * One example of a rule: what it changes in the base plan, and what the rule must then answer.
 *
 * @param change by path
 * @param expect an outcome's words, or {@code silent} where the rule must say nothing
 * @param says a piece of the headline, if given
 * @param at the name of the place whose answer is meant, if given; else the rule's worst answer is
 * @param consequence the answer's consequence, if given
 */
public record Example(
    String rule,
    String name,
    Map<String, Tree.Node> change,
    String expect,
    Optional<String> says,
    Optional<String> at,
    Optional<String> consequence) {

  public static final Path RULES = Path.of("rules");

  private static final List<String> KEYS =
      List.of("name", "change", "expect", "says", "at", "consequence");
  private static final Catalogue NOTHING = new Catalogue(List.of());

  /** Every example of every rule. */
  public static List<Example> all() {
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
        if (!KEYS.contains(entry.key())) {
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
              text(fields, "at"),
              text(fields, "consequence")));
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

  /** The facts of a plan. Errors: {@link IllegalStateException} if it cannot be read. */
  static List<Object> facts(Fragment plan) {
    PlanReader.Read read = PlanReader.read("example", plan.bytes(), NOTHING);
    List<Problem> errors =
        read.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR).toList();
    if (!errors.isEmpty()) {
      throw new IllegalStateException(errors.toString());
    }
    return Facts.of(Bench.of(read.plan(), read.problems()));
  }

  /** The facts of the base plan with this example's changes. */
  public List<Object> facts() {
    Fragment plan = Fragment.base();
    change.forEach(plan::change);
    return facts(plan);
  }

  /**
   * In what the findings differ from what the example expects; empty if in nothing.
   *
   * @param findings of its rule and, if need be, of others
   */
  public Optional<String> failure(List<Finding> findings) {
    List<Finding> answers =
        Ranking.ranked(findings).stream()
            .filter(f -> f.rule().equals(rule))
            .filter(f -> at.map(f.at().name()::equals).orElse(true))
            .toList();
    String answer = answers.isEmpty() ? "silent" : answers.get(0).outcome().words();
    if (!answer.equals(expect)) {
      return Optional.of("expected " + expect + ", but was " + answer + ": " + answers);
    }
    if (says.isPresent() && !said(answers).contains(says.get())) {
      return Optional.of("expected \"" + says.get() + "\" in: " + said(answers));
    }
    if (consequence.isPresent() && !consequence.get().equals(consequence(answers))) {
      return Optional.of("expected " + consequence.get() + ", but was " + consequence(answers));
    }
    return Optional.empty();
  }

  private static String said(List<Finding> answers) {
    return answers.isEmpty() ? "" : answers.get(0).headline();
  }

  private static String consequence(List<Finding> answers) {
    return answers.isEmpty() ? "" : answers.get(0).consequence().word();
  }

  @Override
  public String toString() {
    return rule + ": " + name;
  }
}
