package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code choose} on the command line. */
final class ChooseCommandTest {
  private static final String CATALOGUE = "catalog-sample/catalogue";

  @TempDir private Path folder;
  private Path plan;

  @BeforeEach
  void aPlanWithOpenPlaces() throws IOException {
    plan = folder.resolve("open.yaml");
    Files.writeString(
        plan,
        Files.readString(Path.of("catalog-sample/plans/thistlewick-tender.yaml"))
            .replace("part: receiver-dcc-18v-5a", "part: any")
            .replace("handset: handset-heron-eu", "handset: any # which?")
            .replace("{part: connector-valley-pins,", "{kind: connector, part: any,"));
  }

  private Run choose(String... more) {
    String[] arguments = new String[4 + more.length];
    arguments[0] = "choose";
    arguments[1] = plan.toString();
    arguments[2] = "--catalogue";
    arguments[3] = CATALOGUE;
    System.arraycopy(more, 0, arguments, 4, more.length);
    return Run.of(arguments);
  }

  @Test
  void whatWorksIsShownWithItsProof() {
    Run run = choose("--order", "cost", "--best", "2", "--seconds", "600");

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.shown()).contains("receiver 10").contains("handset 7").contains("pack-plug 8");
    assertThat(run.shown()).containsPattern("560 combinations, [0-9]+ works?, all considered\\.");
    assertThat(run.shown()).contains("1  price ").contains("warning").contains("cannot tell");
  }

  @Test
  void theAnswerIsTheSameWhateverTheThreads() {
    Run one = choose("--order", "size", "--threads", "1", "--seconds", "600");
    Run three = choose("--order", "size", "--threads", "3", "--seconds", "600");

    assertThat(one.out()).isEqualTo(three.out()).contains("all considered");
  }

  @Test
  void aCombinationIsWrittenAndPassesTheCheck() throws IOException {
    Path full = folder.resolve("full.yaml");
    String before = Files.readString(plan);

    Run run =
        choose(
            "--order",
            "cost",
            "--best",
            "2",
            "--number",
            "2",
            "--best-only",
            "--seconds",
            "600",
            "--write",
            full.toString());

    assertThat(run.code()).isZero();
    assertThat(run.shown()).contains("Combination 2 is written");
    assertThat(Files.readString(plan)).isEqualTo(before);
    assertThat(Files.readString(full))
        .contains("# which?")
        .doesNotContain("any")
        .hasLineCount((int) before.lines().count());
    assertThat(Run.of("check", full.toString(), "--catalogue", CATALOGUE).code()).isZero();
  }

  @Test
  void thePlanItselfIsNotWrittenOver() {
    Run run = choose("--write", plan.toString());

    assertThat(run.code()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.told()).contains("--write").contains("would write over the plan");
  }

  @Test
  void aKindThatIsMissingIsAdded() throws IOException {
    Files.writeString(plan, Files.readString(plan).replaceFirst("(?m)^  fuse: .*\\R", ""));
    Path full = folder.resolve("full.yaml");

    Run run =
        choose(
            "--order",
            "cost",
            "--best-only",
            "--best",
            "1",
            "--seconds",
            "600",
            "--write",
            full.toString());

    assertThat(run.shown()).contains("fuse 14 (added)");
    assertThat(Files.readString(full)).containsPattern("(?m)^  fuse: fuse-");
    assertThat(choose("--only-open", "--best-only", "--seconds", "0").shown())
        .doesNotContain("fuse 14");
  }

  @Test
  void aSearchThatIsStoppedSaysThatNotAllIsConsidered() {
    Run run = choose("--seconds", "0");

    assertThat(run.shown()).contains("not all considered");
    assertThat(run.shown()).containsAnyOf("by chance", "Nothing was found that works");
  }

  @Test
  void whereNothingWorksItSaysWhatAPartWouldNeed() throws IOException {
    Files.writeString(
        plan,
        Files.readString(plan)
            .replace(
                "{part: any, bay: water-tank, cutoff_volts: 10 V}",
                "{part: any, bay: water-tank, input_max_volts: 8 V, input_min_volts: 5 V}"));

    Run run = choose("--seconds", "600");

    assertThat(run.code()).isEqualTo(Exit.FOUND);
    assertThat(run.shown()).contains("none works, all considered").contains("Nothing works.");
    assertThat(run.shown())
        .contains("voltage/receiver-over-maximum")
        .contains("input max volts of at least 14.6 V");
  }

  @Test
  void wrongArgumentsAreToldApart() {
    assertThat(choose("--order", "beauty").told())
        .contains("--order takes warnings, cost, run-time, size");
    assertThat(choose("--best", "0").told()).contains("--best takes a whole number from 1 to 1000");
    assertThat(choose("--threads", "many").told()).contains("--threads takes a whole number");
    assertThat(choose("--seconds", "-1").code()).isEqualTo(Exit.UNUSABLE);
    assertThat(choose("--number", "2").told()).contains("needs --write FILE");
    assertThat(choose("--number", "7", "--write", "x.yaml").told()).contains("--number takes");
  }

  @Test
  void aPlanThatLeavesNothingOpenIsRefused() {
    Run run =
        Run.of("choose", "catalog-sample/plans/thistlewick-tender.yaml", "--catalogue", CATALOGUE);

    assertThat(run.code()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.told()).contains("leaves no place open").contains("receiver: any");
  }
}
