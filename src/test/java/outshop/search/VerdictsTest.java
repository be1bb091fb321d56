package outshop.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import outshop.acceptance.Sample;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.plan.Plan;
import outshop.rules.RuleEngine;
import outshop.rules.Verdict;

/** The verdicts without texts are those of the report, and pieces give the same as the whole. */
final class VerdictsTest {
  private static final RuleEngine ENGINE = RuleEngine.load();

  @Test
  void theVerdictsAreThoseOfTheFindings() {
    List<Plan> plans = new ArrayList<>();
    Sample.plans().forEach(path -> plans.add(Sample.plan(path)));
    Space space =
        Generated.space(6, Map.of("pack", 9, "receiver", 9, "decoder", 9, "fuse", 9), 0.2);
    Random random = new Random(6);
    for (int n = 0; n < 60; n++) {
      plans.add(space.plan(space.parts(random.ints(4, 0, 9).toArray())));
    }
    for (Plan plan : plans) {
      List<Object> facts = Facts.of(Bench.of(plan, List.of()));
      List<String> found = new ArrayList<>();
      for (Finding f : ENGINE.run(facts)) {
        found.add(f.rule() + " " + f.at().name() + " " + f.outcome());
      }
      List<String> whole = words(ENGINE.verdicts(facts));
      List<String> byPiece = new ArrayList<>();
      for (int piece = 0; piece < Facts.pieces(); piece++) {
        byPiece.addAll(words(ENGINE.verdicts(Facts.piece(Bench.of(plan, List.of()), piece))));
      }

      assertThat(whole).isNotEmpty().containsExactlyInAnyOrderElementsOf(found);
      assertThat(byPiece).containsExactlyInAnyOrderElementsOf(found);
    }
  }

  /** So that it makes no difference with which other facts the engine is given it. */
  @Test
  void everyRuleAsksForOneFact() throws IOException {
    Pattern conditions = Pattern.compile("\\bwhen\\b(.*?)\\bthen\\b", Pattern.DOTALL);
    Pattern fact = Pattern.compile("\\$[A-Za-z]+ *: *[A-Z][A-Za-z]+ *\\(");
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of("rules"))) {
      files = all.filter(p -> p.toString().endsWith(".drl")).toList();
    }
    assertThat(files).isNotEmpty();
    for (Path file : files) {
      List<String> when =
          conditions.matcher(Files.readString(file)).results().map(m -> m.group(1)).toList();
      assertThat(when).as(file.toString()).hasSize(1);
      assertThat(fact.matcher(when.get(0)).results()).as(file.toString()).hasSize(1);
      assertThat(when.get(0)).as(file.toString()).doesNotContainPattern("\\b(not|exists|from)\\b");
    }
  }

  private static List<String> words(List<Verdict> verdicts) {
    return verdicts.stream().map(v -> v.rule() + " " + v.at().name() + " " + v.outcome()).toList();
  }
}
