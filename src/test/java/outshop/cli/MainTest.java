package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import outshop.render.Approved;
import outshop.rules.RuleBook;
import outshop.rules.RuleText;

final class MainTest {
  @TempDir Path folder;

  @Test
  void theHelpReadsAsApproved() throws IOException {
    Run run = Run.of("help");
    assertThat(run.code()).isZero();
    Approved.check("help.txt", run.out());
    assertThat(Run.of("--help").out()).isEqualTo(run.out());
  }

  @Test
  void theHelpOfCheckReadsAsApproved() throws IOException {
    Approved.check("help-check.txt", Run.of("help", "check").out());
    assertThat(Run.of("check", "--help").out()).isEqualTo(Run.of("help", "check").out());
  }

  @Test
  void everyRuleIsExplainedWithAllThatItsPageHolds() {
    for (RuleText rule : RuleBook.load().all()) {
      Run run = Run.of("explain", rule.name());
      assertThat(run.code()).as(rule.name()).isZero();
      assertThat(run.out()).startsWith(rule.name() + "\n-----");
      assertThat(words(run.out()))
          .contains(words(rule.title()), words(rule.why()), words(rule.source()))
          .contains("Why it matters", "Examples --------");
      assertThat(words(run.out()).contains("It protects people")).isEqualTo(rule.protectsPeople());
      assertThat(run.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    }
  }

  /** In one line, however it was wrapped. */
  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void aRuleIsFoundUnderItsShortNameToo() {
    Run run = Run.of("explain", "voltage/receiver-over-maximum");
    assertThat(run.out())
        .contains("\n  violation  over 100 % of the limit (destroys: a part burns out)\n");
    assertThat(Run.of("explain", "receiver-over-maximum").out()).isEqualTo(run.out());
  }

  static List<String> commands() {
    return Commands.NAMES;
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandHasHelpThatFits(String name) {
    Run run = Run.of("help", name);
    assertThat(run.code()).isZero();
    assertThat(run.out()).startsWith("outshop " + name);
    assertThat(run.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    assertThat(run.out().toLowerCase(Locale.ROOT))
        .doesNotContainPattern("\\b(safe|safely|please|invalid|illegal|simply)\\b");
    assertThat(Run.of("help").out()).contains("  " + name);
  }

  @Test
  void withoutArgumentsTheHelpGoesToTheProblems() {
    Run run = Run.of();
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).isEqualTo(Run.of("help").out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          chek plan                      | there is no command "chek" (did you mean "check"?)
          fly                            | there is no command "fly"; outshop help lists them
          check                          | "check" needs PLAN after it
          check a b                      | "check" takes one PLAN after it; "b" is one too many
          rules a                        | "rules" takes nothing after it; "a" is too much
          check a --all=yes b            | "b" is one too many
          check a --colur always         | "check" has no option --colur (did you mean "--colour"?)
          check a --colour allways       | --colour takes auto, always, never, not "allways" (did you mean "always"?)
          check a --as                   | --as needs text|json after it
          check a --to --all             | --to needs FILE after it
          check a --to=                  | --to needs FILE after it
          check a --all=yes              | --all takes nothing after it
          check a --as text --as json    | --as is given twice
          help fly                       | there is no command "fly"
          explain voltage/reciever-over-maximum | (did you mean "voltage/receiver-over-maximum"?)
          """)
  void whatIsWrongWithTheArgumentsIsTold(String arguments, String told) {
    Run run = Run.of(arguments.split(" +"));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.told()).contains(told).startsWith("outshop: ");
  }

  @Test
  void everythingWrongIsToldAtOnce() {
    Run run = Run.of("check", "--colur", "--as", "html");
    assertThat(run.told()).contains("no option --colur", "--as takes text, json", "needs PLAN");
  }

  @Test
  void afterTwoDashesEverythingIsAnOperand() {
    Run run = Run.of("check", "--", "--all");
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("--all").doesNotContain("needs PLAN");
  }

  @Test
  void hostileArgumentsReachTheScreenHarmless() {
    String bad = "\u001b[2J\u202e\u0007" + "y".repeat(10_000);
    for (String[] arguments :
        new String[][] {
          {bad},
          {"check", bad},
          {"check", "--" + bad},
          {"explain", bad},
          {"check", "x", "--as", bad}
        }) {
      Run run = Run.of(arguments);
      assertThat(run.code()).isEqualTo(2);
      assertThat(run.err())
          .doesNotContain("\u001b")
          .doesNotContain("\u202e")
          .doesNotContain("\u0007");
      assertThat(run.err().length()).isLessThan(12_000);
    }
  }

  @Test
  void aFaultOfTheProgramIsOwnedUpTo() {
    Run run = failing();
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err())
        .contains("a fault of the program itself", "IllegalStateException: on purpose", "Report it")
        .doesNotContain("FailingStream")
        .doesNotContain("MainTest.java");
    assertThat(failing("--trace").err()).contains("MainTest.java");
  }

  private static Run failing(String... more) {
    OutputStream out =
        new OutputStream() {
          @Override
          public void write(int b) {
            throw new IllegalStateException("on purpose");
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Surroundings around = new Surroundings(out, err, StandardCharsets.UTF_8, Map.of(), () -> false);
    List<String> arguments = new java.util.ArrayList<>(List.of("version"));
    arguments.addAll(List.of(more));
    int code = Main.run(arguments, around);
    return new Run(code, "", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void aReaderThatGoesAwayIsNoFaultButAFullDiskIs() {
    assertThat(writingFails("Broken pipe").code()).isZero();
    Run full = writingFails("No space left on device");
    assertThat(full.code()).isEqualTo(2);
    assertThat(full.err()).contains("No space left on device");
  }

  private static Run writingFails(String message) {
    OutputStream out =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException(message);
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Surroundings around = new Surroundings(out, err, StandardCharsets.UTF_8, Map.of(), () -> false);
    int code = Main.run(List.of("version"), around);
    return new Run(code, "", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    assertThat(Run.of("version").out()).isEqualTo("outshop " + Main.VERSION + "\n");
    assertThat(Files.readString(Path.of("pom.xml")))
        .contains("<artifactId>outshop</artifactId>\n  <version>" + Main.VERSION + "</version>");
    for (String launcher : List.of("outshop", "outshop.cmd")) {
      assertThat(Files.readString(Path.of(launcher))).contains("outshop-" + Main.VERSION + ".jar");
    }
  }

  @Test
  void everyRuleIsListedUnderItsFamily() {
    Run run = Run.of("rules");
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("voltage\n-------\n", "voltage/receiver-over-maximum\n    A full");
  }

  @Test
  void aNewCatalogueIsReadBackWithoutErrorsAndNeverOverwritten() {
    String catalogue = folder.resolve("catalogue").toString();
    Run made = Run.of("new-catalogue", catalogue);
    assertThat(made.code()).isZero();
    assertThat(made.out()).contains("20 tables");
    Run read = Run.of("check-catalogue", catalogue);
    assertThat(read.code()).isZero();
    assertThat(read.out()).contains("0 parts; 0 errors");
    Run again = Run.of("new-catalogue", catalogue);
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.err()).contains("pack.csv");
  }

  @Test
  void aCatalogueWithErrorsIsUnusable() throws IOException {
    Files.writeString(folder.resolve("receiver.csv"), "id,titel\nrx,Receiver\nrx,Again\n");
    Run run = Run.of("check-catalogue", folder.toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("receiver.csv:");
    assertThat(run.out()).contains("1 part; 1 error, ");
  }

  @Test
  void ofVeryManyProblemsTheFirstAreShownErrorsBeforeNotes() throws IOException {
    StringBuilder table = new StringBuilder("id,awg\n");
    for (int i = 1; i <= 150; i++) {
      table.append("w").append(i).append(",thick\n");
    }
    Files.writeString(folder.resolve("wire.csv"), table);
    Run run = Run.of("check-catalogue", folder.toString());
    assertThat(run.code()).isEqualTo(2);
    List<String> told = run.err().lines().filter(l -> l.startsWith("  - ")).toList();
    assertThat(told).hasSize(101);
    assertThat(told.get(0)).contains("wire.csv:2:");
    assertThat(told.get(99)).contains("wire.csv:101:");
    assertThat(told.get(100)).isEqualTo("  - and 51 more: mend these first, then run it again");
    assertThat(run.err()).startsWith("outshop: 150 errors in the input:");
    assertThat(run.out()).contains("150 parts; 150 errors, 0 unlikely values, 1 note");
  }

  @Test
  void aNewPlanIsReadBackAndNeverOverwritten() throws IOException {
    Path plan = folder.resolve("mine.yaml");
    Run made =
        Run.of(
            "new-plan",
            plan.toString(),
            "--title",
            "Mine",
            "--lamps",
            "front, rear",
            "--bays=tank");
    assertThat(made.code()).isZero();
    assertThat(Files.readString(plan)).contains("Mine", "front", "rear", "tank");
    Run read = Run.of("check", plan.toString());
    assertThat(read.err()).isEmpty();
    assertThat(read.code()).isBetween(0, 1);
    Run again = Run.of("new-plan", plan.toString());
    assertThat(again.code()).isEqualTo(2);
    assertThat(again.err()).contains("is there already");
    Run named = Run.of("new-plan", folder.resolve("two.yaml").toString(), "--motors", "a,a");
    assertThat(named.code()).isEqualTo(2);
    assertThat(named.err()).contains("the name is taken");
  }

  @Test
  void aMeasuringSheetAsksOnlyForWhatThePlanDoesNotState() throws IOException {
    Run blank = Run.of("measuring-sheet");
    assertThat(blank.code()).isZero();
    Run stated = Run.of("measuring-sheet", Plans.good(folder).toString());
    assertThat(stated.code()).isZero();
    assertThat(stated.out().length()).isLessThan(blank.out().length());
    Path to = folder.resolve("sheet.txt");
    assertThat(Run.of("measuring-sheet", "--to", to.toString()).code()).isZero();
    assertThat(Files.readString(to)).isEqualTo(blank.out());
  }
}
