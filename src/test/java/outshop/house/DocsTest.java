package outshop.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import outshop.acceptance.Sample;
import outshop.coverage.Coverage;
import outshop.outside.VerificationPage;
import outshop.render.terminal.Look;
import outshop.render.terminal.TerminalReport;
import outshop.rulebook.FormatPages;
import outshop.rulebook.RuleIndex;
import outshop.rulebook.WordPage;
import outshop.rulecases.Reads;

/**
 * The pages that are made of the program and its tests are current. With {@code
 * -Doutshop.approve=true} they are written anew.
 */
final class DocsTest {
  private static final String FENCE = "```";

  private static final int SCREEN_LINES = 40;

  @Test
  void theCatalogueReferenceIsCurrent() throws IOException {
    current("docs/catalogue.md", FormatPages.catalogue());
  }

  @Test
  void thePlanReferenceIsCurrent() throws IOException {
    current("docs/plan.md", FormatPages.plan());
  }

  @Test
  void thePageOfWordsIsCurrent() throws IOException {
    current("docs/words.md", WordPage.text());
  }

  @Test
  void theVerificationPageIsCurrent() throws IOException {
    current("docs/verification.md", VerificationPage.text());
  }

  @Test
  void theCoverageTableIsCurrent() throws IOException {
    current("docs/coverage.md", Coverage.text(Sample.ENGINE.book().all()));
  }

  @Test
  void theRuleIndexIsCurrent() throws IOException {
    current("docs/rules.md", RuleIndex.text(Sample.ENGINE.book(), Reads.recorded()));
  }

  /** The screen that the README shows is what the program prints. */
  @Test
  void theReadmesScreenIsWhatIsPrinted() throws IOException {
    Path plan = Path.of("catalog-sample/plans/five-cells-too-many.yaml");
    String report =
        TerminalReport.text(
            Sample.report(plan),
            new Look(Look.USUAL, false, StandardCharsets.UTF_8),
            new TerminalReport.Depth(false, false));
    String screen =
        report.lines().limit(SCREEN_LINES).collect(Collectors.joining("\n")).stripTrailing();
    String readme = Files.readString(Path.of("README.md"));
    int from = readme.indexOf(FENCE, readme.indexOf("## What it prints")) + FENCE.length();
    int to = readme.indexOf(FENCE, from);

    current("README.md", readme.substring(0, from) + "\n" + screen + "\n" + readme.substring(to));
  }

  private static void current(String file, String text) throws IOException {
    Path path = Path.of(file);
    if (Boolean.getBoolean("outshop.approve")) {
      Files.writeString(path, text);
    }
    assertThat(Files.readString(path))
        .as("%s; run the tests with -Doutshop.approve=true and read the difference", file)
        .isEqualTo(text);
  }
}
