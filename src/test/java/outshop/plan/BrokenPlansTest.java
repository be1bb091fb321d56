package outshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every broken plan of {@code broken-plans.txt} with the exact lines said about it. In that file
 * {@code === } begins a case, {@code >>> } an expected line; {@code <TAB>} and {@code <BELL>} stand
 * for characters that cannot be seen.
 */
final class BrokenPlansTest {

  record Case(String name, String plan, List<String> expected) {
    @Override
    public String toString() {
      return name;
    }
  }

  static List<Case> cases() throws IOException {
    List<Case> cases = new ArrayList<>();
    String name = "";
    StringBuilder plan = new StringBuilder();
    List<String> expected = new ArrayList<>();
    try (InputStream in = BrokenPlansTest.class.getResourceAsStream("broken-plans.txt")) {
      String all = new String(in.readAllBytes(), StandardCharsets.UTF_8) + "=== end\n";
      for (String line : all.split("\n")) {
        if (line.startsWith("=== ")) {
          if (!name.isEmpty()) {
            cases.add(new Case(name, text(plan), List.copyOf(expected)));
          }
          name = line.substring(4);
          plan.setLength(0);
          expected.clear();
        } else if (line.startsWith(">>> ")) {
          expected.add(line.substring(4));
        } else if (!name.isEmpty()) {
          plan.append(line).append('\n');
        }
      }
    }
    return cases;
  }

  private static String text(StringBuilder plan) {
    return plan.toString().replace("<TAB>", "\t").replace("<BELL>", "\u0007");
  }

  static List<String> lines(String plan) {
    byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
    return PlanReader.read("plan.yaml", bytes, SmallCatalogue.CATALOGUE).problems().stream()
        .map(p -> p.severity().name().toLowerCase(Locale.ROOT) + " " + p.line())
        .toList();
  }

  static Stream<Case> all() throws IOException {
    return cases().stream();
  }

  @ParameterizedTest
  @MethodSource("all")
  void says_exactly_what_is_wrong(Case broken) {
    assertThat(lines(broken.plan())).containsExactlyElementsOf(broken.expected());
    assertThat(broken.expected()).isNotEmpty();
  }

  @Test
  void the_table_holds_every_case_once() throws IOException {
    List<String> names = cases().stream().map(Case::name).toList();
    assertThat(names).hasSizeGreaterThanOrEqualTo(45).doesNotHaveDuplicates();
  }
}
