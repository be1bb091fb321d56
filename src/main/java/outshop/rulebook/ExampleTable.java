package outshop.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import outshop.input.Problem;
import outshop.input.Tree;
import outshop.rules.RuleBookException;

/** Lays out a rule's examples as a section of its page: each with its change and its answer. */
final class ExampleTable {
  private static final String BASE =
      "Each example changes the base plan, in which nothing is wrong, in a value or two.";

  private final String rule;

  private ExampleTable(String rule) {
    this.rule = rule;
  }

  /**
   * The section, as lines of Markdown. Errors: {@link RuleBookException} where the examples cannot
   * be read.
   *
   * @param rule family and name
   * @param cases the file of its examples
   */
  static List<String> section(String rule, Path cases) throws IOException {
    Tree.Read read = Tree.read(cases.toString(), Files.readAllBytes(cases));
    List<String> problems = read.problems().stream().map(Problem::line).toList();
    if (!problems.isEmpty()) {
      throw new RuleBookException(rule, "its examples cannot be read: " + problems);
    }
    ExampleTable table = new ExampleTable(rule);
    if (!(read.root().orElse(null) instanceof Tree.Rows rows) || rows.items().isEmpty()) {
      throw new RuleBookException(rule, "its examples are no list");
    }
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("# Examples");
    lines.add("");
    lines.add(BASE);
    lines.add("");
    lines.add("| example | what is changed | the rule's answer |");
    lines.add("| --- | --- | --- |");
    for (Tree.Node item : rows.items()) {
      lines.add(table.row(item));
    }
    return lines;
  }

  private String row(Tree.Node item) {
    if (!(item instanceof Tree.Fields example)) {
      throw new RuleBookException(rule, "line " + item.line() + " of its examples: no example");
    }
    return "| "
        + cell(required(example, "name"))
        + " | "
        + cell(changes(example))
        + " | "
        + cell(answer(example))
        + " |";
  }

  private static String cell(String words) {
    return words.replace('|', '/').replaceAll("\\s+", " ").strip();
  }

  private String answer(Tree.Fields example) {
    String expected = required(example, "expect");
    String at = text(example, "at");
    String says = text(example, "says");
    return (expected.equals("silent") ? "says nothing" : expected)
        + (at.isEmpty() ? "" : " at " + at)
        + (says.isEmpty() ? "" : ": \"... " + says + " ...\"");
  }

  private static String changes(Tree.Fields example) {
    List<String> words = new ArrayList<>();
    if (example.find("change").map(Tree.Entry::value).orElse(null) instanceof Tree.Fields changes) {
      for (Tree.Entry change : changes.entries()) {
        words.add(ChangeWords.of(change.key(), change.value()));
      }
    }
    return words.isEmpty() ? "nothing" : String.join("; ", words);
  }

  private String required(Tree.Fields example, String key) {
    String text = text(example, key);
    if (text.isEmpty()) {
      throw new RuleBookException(
          rule, "line " + example.line() + " of its examples: no \"" + key + "\"");
    }
    return text;
  }

  private static String text(Tree.Fields example, String key) {
    return example.find(key).map(Tree.Entry::value).orElse(null) instanceof Tree.Text text
        ? text.text()
        : "";
  }
}
