package outshop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.findings.Finding;
import outshop.input.UnusableInput;
import outshop.render.Approved;
import outshop.report.Report;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

final class ExplainCommandTest {
  private static final String RULE = "voltage/receiver-over-maximum";

  @TempDir Path folder;

  /** What is shown before the rule's own page. */
  @ParameterizedTest
  @CsvSource({
    "violation, voltage/receiver-over-maximum, five-cells-too-many",
    "fine, voltage/receiver-over-maximum, sallowmere-tank",
    "fine-without-numbers, charging/charger-polarity-reversed, sallowmere-tank",
    "cannot-tell, current/pack-trips-at-peak, half-measured",
    "silent, voltage/hold-up-over-voltage, hollowpit-shunter"
  })
  void whatARuleMakesOfAPlanReadsAsApproved(String name, String rule, String plan)
      throws IOException {
    Run run = Run.of("explain", rule, "--plan", "catalog-sample/plans/" + plan + ".yaml");
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    Approved.check(
        "explain-" + name + ".txt", run.out().substring(0, run.out().indexOf("\nThe rule\n")));
  }

  /** The demo plans taken in turn, so that each rule meets one and each plan several rules. */
  @TestFactory
  Stream<DynamicTest> everyAnswerOfARuleIsShownWithEveryStep() throws IOException {
    RuleEngine engine = RuleEngine.load();
    List<RuleText> rules = List.copyOf(engine.book().all());
    List<Path> plans = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("catalog-sample", "plans"))) {
      files.sorted().forEach(plans::add);
    }
    List<DynamicTest> tests = new ArrayList<>();
    for (Path plan : plans) {
      List<RuleText> some = new ArrayList<>();
      for (int i = plans.indexOf(plan); i < rules.size(); i += 5 * plans.size()) {
        some.add(rules.get(i));
      }
      tests.add(DynamicTest.dynamicTest(plan.toString(), () -> everyStep(engine, plan, some)));
    }
    return tests.stream();
  }

  private static void everyStep(RuleEngine engine, Path plan, List<RuleText> rules)
      throws UnusableInput {
    PlanFiles files = PlanFiles.read(plan, Optional.empty());
    Report report = new Check(engine).report(files.plan(), files.problems());
    for (RuleText rule : rules) {
      Run run = Run.of("explain", rule.name(), "--plan", plan.toString());
      assertThat(run.code()).isZero();
      assertThat(run.out().lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
      List<Finding> found =
          Stream.of(report.findings(), report.cannotTell(), report.fine())
              .flatMap(List::stream)
              .filter(f -> f.rule().equals(rule.name()))
              .toList();
      String shown = words(run.out());
      assertThat(shown.contains("The rule says nothing about this plan:"))
          .isEqualTo(found.isEmpty());
      for (Finding finding : found) {
        assertThat(shown).contains(words(finding.headline()), words(finding.at().described()));
        for (Finding.Step step : finding.working()) {
          assertThat(shown).contains(words(step.what() + " = " + step.value()), words(step.how()));
        }
      }
    }
  }

  @Test
  void theBoundsStandInThePlansOwnNumbers() throws IOException {
    Run run = explain(RULE, Plans.withReceiverFor(folder, "20 V"));
    assertThat(run.out())
        .contains(
            "o||  fine\n     receiver",
            "room      13.4 %\n",
            "bounds    violation over 20 V, the limit\n"
                + "               warning over 19.4 V, 97 % of the limit\n")
        .contains("What it says\n------------\n", "Examples\n--------\n");
  }

  @Test
  void whatIsMissingIsAskedForWithHowToGetIt() throws IOException {
    Run run = explain(RULE, Plans.withoutReceiverLimit(folder));
    assertThat(run.out()).contains("o//  cannot tell, at worst destroys: ");
    assertThat(run.shown()).contains("get it    receiver: input_max_volts: ");
    assertThat(run.code()).isZero();
  }

  @Test
  void whatIsStatedAsNoneIsTheReasonForSilence() throws IOException {
    Path plan = changed("    cutoff_volts: 10 V\n", "    cutoff_volts: none\n");
    Run run = explain("voltage/cut-off-too-high", plan);
    assertThat(run.shown())
        .contains(
            "The rule says nothing about this plan:",
            "receiver: cutoff volts is stated as none, so there is nothing to compare");
  }

  @Test
  void aPartThatThePlanDoesNotHaveIsTheReasonForSilence() throws IOException {
    Run run = explain("voltage/hold-up-over-voltage", Plans.good(folder));
    assertThat(run.shown())
        .contains("The rule says nothing about this plan:", "the plan has no capacitor");
  }

  @Test
  void aFindingThatTheOwnerAcceptedIsShownWithTheReason() throws IOException {
    Path plan = Plans.withReceiverFor(folder, "17 V");
    Files.writeString(
        plan,
        Files.readString(plan)
            + "accepted:\n  - {rule: "
            + RULE
            + ", where: receiver, reason: it is only for the shelf}\n");
    Run run = explain(RULE, plan);
    assertThat(run.out()).contains("o//  warning, destroys: ");
    assertThat(run.shown()).contains("by the owner, not counted: it is only for the shelf");
  }

  @Test
  void onePlaceCanBeShownAlone() throws IOException {
    Path plan = Plans.good(folder);
    Run all = explain("voltage/direct-voltage-rating", plan);
    assertThat(all.out()).contains("where     fuse", "where     switch");
    Run one = explain("voltage/direct-voltage-rating", plan, "--at", "fuse");
    assertThat(one.out()).contains("where     fuse").doesNotContain("where     switch");
    Run none = explain("voltage/direct-voltage-rating", plan, "--at", "fuze");
    assertThat(none.code()).isEqualTo(2);
    assertThat(none.told())
        .contains("has no answer at \"fuze\" (did you mean \"fuse\"?)", "it has answers at ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          explain                                    | "explain" needs RULE after it
          explain receiver-over-maximum --at x       | --at needs --plan PLAN as well
          explain receiver-over-maximum --catalogue x | --catalogue needs --plan PLAN as well
          explain recever-over-maximun               | (did you mean "voltage/receiver-over-maximum"?)
          explain resettable                         | (with it in their names: protection/resettable-fuse-above-ampacity,
          explain nothing-of-the-kind-anywhere       | there is no rule "nothing-of-the-kind-anywhere"; outshop rules
          """)
  void whatIsWrongWithTheArgumentsIsTold(String arguments, String told) {
    Run run = Run.of(arguments.split(" +"));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.told()).contains(told);
  }

  @Test
  void aPlanThatCannotBeReadIsAnInputFault() {
    Run run = Run.of("explain", RULE, "--plan", folder.resolve("none.yaml").toString());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void coloursSayNothingThatWordsDoNotSay() throws IOException {
    Path plan = Plans.withReceiverFor(folder, "14 V");
    String plain = explain(RULE, plan, "--colour", "never").out();
    String coloured = explain(RULE, plan, "--colour", "always").out();
    assertThat(coloured).contains("\u001b[");
    assertThat(coloured.replaceAll("\u001b\\[[0-9;]*m", "")).isEqualTo(plain);
    assertThat(explain(RULE, plan).out()).isEqualTo(plain);
  }

  @Test
  void signsThatTheTerminalLacksAreSpelledOut() throws IOException {
    Run ascii =
        Run.in(
            Map.of(),
            false,
            StandardCharsets.US_ASCII,
            "explain",
            "charging/charging-temperature",
            "--plan",
            Plans.good(folder).toString());
    assertThat(ascii.out()).contains("0 C").doesNotContain("?");
  }

  private Path changed(String from, String to) throws IOException {
    Path plan = Plans.good(folder);
    String text = Files.readString(plan);
    assertThat(text).contains(from);
    Files.writeString(plan, text.replace(from, to));
    return plan;
  }

  private static Run explain(String rule, Path plan, String... more) {
    List<String> arguments = new ArrayList<>(List.of("explain", rule, "--plan", plan.toString()));
    arguments.addAll(List.of(more));
    return Run.of(arguments.toArray(String[]::new));
  }

  /** In one line, however it was wrapped. */
  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
