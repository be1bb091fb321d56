package outshop.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.acceptance.Sample;
import outshop.catalogue.Catalogue;
import outshop.findings.Finding;
import outshop.input.Tree;
import outshop.report.Report;

/**
 * Whole plans with the complete list of what every rule finds in them, so that a rule that raises a
 * false alarm where it does not belong is caught. With {@code -Doutshop.approve=true} the lists are
 * written anew, to be read before they are committed.
 */
public final class WholePlansTest {
  private static final Path PLANS = Path.of("src/test/resources/whole-plans.yaml");
  private static final Path EXPECTED = Path.of("src/test/resources/whole-plans.expected.txt");

  @TestFactory
  Stream<DynamicTest> everyPlanGivesItsCompleteList() throws IOException {
    Map<String, List<String>> found = new LinkedHashMap<>();
    for (Map.Entry<String, byte[]> plan : plans().entrySet()) {
      found.put(plan.getKey(), found(plan.getKey(), plan.getValue()));
    }
    if (Boolean.getBoolean("outshop.approve")) {
      write(found);
    }
    Map<String, List<String>> expected = expected();
    return found.keySet().stream()
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name, () -> assertThat(found.get(name)).isEqualTo(expected.get(name))));
  }

  @Test
  void thereAreEnoughOfThem() throws IOException {
    assertThat(plans()).hasSizeGreaterThanOrEqualTo(40);
    assertThat(expected().keySet()).containsExactlyElementsOf(plans().keySet());
  }

  @Test
  void thePlansNearTheBoundsAreClean() throws IOException {
    Map<String, List<String>> near = new LinkedHashMap<>(expected());
    near.keySet().removeIf(name -> !name.startsWith("near - "));

    assertThat(near).hasSizeGreaterThanOrEqualTo(12);
    assertThat(near.values())
        .allSatisfy(lines -> assertThat(lines).allMatch(l -> l.startsWith("advice")));
  }

  /** The text of every plan, by its name. */
  public static Map<String, byte[]> plans() throws IOException {
    Map<String, byte[]> plans = new LinkedHashMap<>();
    Tree.Read read = Tree.read(PLANS.toString(), Files.readAllBytes(PLANS));
    assertThat(read.problems()).isEmpty();
    for (Tree.Node node : ((Tree.Rows) read.root().orElseThrow()).items()) {
      Tree.Fields fields = (Tree.Fields) node;
      Fragment plan =
          Fragment.of(
              "base-plan.yaml", Files.readAllBytes(Example.RULES.resolve("base-plan.yaml")));
      for (Tree.Entry change :
          ((Tree.Fields) fields.find("change").orElseThrow().value()).entries()) {
        plan.change(change.key(), change.value());
      }
      plans.put(((Tree.Text) fields.find("name").orElseThrow().value()).text(), plan.bytes());
    }
    return plans;
  }

  private static List<String> found(String name, byte[] bytes) {
    Report report = Sample.report(Sample.plan(name, bytes, new Catalogue(List.of())));
    List<Finding> findings = new ArrayList<>(report.findings());
    findings.addAll(report.cannotTell());
    return findings.stream()
        .map(
            f ->
                f.outcome().words() + " " + f.rule() + " at " + f.at().name() + ": " + f.headline())
        .toList();
  }

  private static void write(Map<String, List<String>> found) throws IOException {
    List<String> lines = new ArrayList<>();
    found.forEach(
        (name, findings) -> {
          lines.add("== " + name);
          lines.addAll(findings);
        });
    Files.write(EXPECTED, lines);
  }

  private static Map<String, List<String>> expected() throws IOException {
    Map<String, List<String>> expected = new LinkedHashMap<>();
    List<String> current = new ArrayList<>();
    for (String line : Files.readAllLines(EXPECTED)) {
      if (line.startsWith("== ")) {
        current = new ArrayList<>();
        expected.put(line.substring(3), current);
      } else {
        current.add(line);
      }
    }
    return expected;
  }
}
