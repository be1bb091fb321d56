package outshop.rulecases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The line {@code reads} in the head of every page is what was recorded while the rule's examples
 * ran. With {@code -Doutshop.approve=true} it is written anew.
 */
final class ReadsTest {
  private static final String KEY = "reads: ";

  @TestFactory
  Stream<DynamicTest> everyPageSaysWhatItsRuleReads() {
    Map<String, List<String>> recorded = Reads.recorded();
    return recorded.entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> current(e.getKey(), e.getValue())));
  }

  @Test
  void theRecordingIsOfWhatTheExamplesShow() {
    Map<String, List<String>> recorded = Reads.recorded();

    assertThat(recorded.get("charging/charge-current-over-maximum"))
        .containsExactly("charger", "pack");
    assertThat(recorded.get("voltage/motor-slow")).contains("motor", "circuit", "wishes");
    assertThat(recorded.get("sound/old-speaker")).containsExactly("old speaker");
  }

  private static void current(String rule, List<String> words) throws IOException {
    assertThat(words).as("its examples change nothing and name nothing").isNotEmpty();
    Path page = Example.RULES.resolve(rule + ".md");
    List<String> lines = Files.readAllLines(page);
    String line = KEY + String.join(", ", words);
    if (Boolean.getBoolean("outshop.approve")) {
      lines = with(line, lines);
      Files.writeString(page, String.join("\n", lines) + "\n");
    }
    assertThat(lines.stream().filter(l -> l.startsWith(KEY)).toList())
        .as("%s; run the tests with -Doutshop.approve=true", page)
        .containsExactly(line);
  }

  /** The page with that line behind its source, in place of the one it may have had. */
  private static List<String> with(String line, List<String> page) {
    int end = page.subList(1, page.size()).indexOf("---") + 1;
    List<String> head = new ArrayList<>(page.subList(0, end));
    head.removeIf(l -> l.startsWith(KEY));
    int source = 0;
    while (!head.get(source).startsWith("source: ")) {
      source++;
    }
    head.add(source + 1, line);
    head.addAll(page.subList(end, page.size()));
    return head;
  }
}
