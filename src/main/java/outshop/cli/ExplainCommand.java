package outshop.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.findings.Consequence;
import outshop.findings.Outcome;
import outshop.input.Nearest;
import outshop.input.Shown;
import outshop.input.UnusableInput;
import outshop.render.terminal.LessonText;
import outshop.render.terminal.PageText;
import outshop.render.terminal.Sheet;
import outshop.report.Basis;
import outshop.report.Lesson;
import outshop.rules.Bound;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;
import outshop.rules.Situation;
import outshop.rules.Words;

/** {@code explain}: prints a rule's page, and with a plan what the rule makes of it. */
final class ExplainCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "explain",
        List.of("RULE"),
        "tell what a rule demands and why; with a plan, with the plan's own numbers",
        List.of(
            Option.valued(
                "--plan",
                "PLAN",
                "show what the rule makes of this plan, step by step, whatever the outcome: also why"
                    + " something is all right"),
            Option.valued(
                "--at", "NAME", "only at the part or place of this name in the plan; needs --plan"),
            PlanFiles.CATALOGUE,
            Option.COLOUR));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Optional<Path> plan = Paths.optional(given.value("--plan"));
    if (plan.isEmpty()) {
      refuseWithoutPlan(given);
    }
    RuleText rule = new RuleNames(RuleBook.load()).find(given.operand(0));
    String colour = given.value(Option.COLOUR.name()).orElse("auto");
    Sheet sheet = new Sheet(around.look(around.colour(colour)));
    sheet.heading(rule.name());
    sheet.paragraph(0, rule.title());
    sheet.blank();
    boolean told = false;
    if (plan.isPresent()) {
      Lesson lesson = lesson(rule, plan.get(), given);
      LessonText.print(lesson, sheet);
      told = lesson.answers().stream().anyMatch(a -> !a.finding().cures().isEmpty());
      sheet.blank();
      sheet.heading("The rule");
    }
    rule(rule, sheet);
    if (!told) {
      reasons(rule, sheet);
    }
    PageText.print(RuleBook.page(rule.name()), sheet);
    words(rule, sheet);
    around.print(sheet.text());
    return Exit.OK;
  }

  private static void refuseWithoutPlan(Given given) throws UsageFault {
    List<String> faults = new ArrayList<>();
    for (String option : List.of("--at", PlanFiles.CATALOGUE.name())) {
      if (given.has(option)) {
        faults.add(option + " needs --plan PLAN as well");
      }
    }
    if (!faults.isEmpty()) {
      throw new UsageFault(faults);
    }
  }

  private static Lesson lesson(RuleText rule, Path plan, Given given)
      throws UsageFault, UnusableInput {
    PlanFiles files = PlanFiles.read(plan, Paths.optional(given.value("--catalogue")));
    Lesson lesson = new Check(RuleEngine.load()).lesson(rule, files.plan(), files.problems());
    Optional<String> at = given.value("--at");
    return at.isPresent() ? only(lesson, at.get()) : lesson;
  }

  private static Lesson only(Lesson lesson, String at) throws UsageFault {
    List<String> places = lesson.places();
    if (places.contains(at)) {
      return lesson.at(at);
    }
    String where =
        places.isEmpty()
            ? "it says nothing about this plan at all; without --at it tells why"
            : "it has answers at " + Shown.text(String.join(", ", places));
    throw new UsageFault(
        "the rule has no answer at \""
            + Shown.text(at)
            + '"'
            + Nearest.hint(at, places)
            + "; "
            + where);
  }

  /** Its bounds and situations, where they come from, whom it protects. */
  private static void rule(RuleText rule, Sheet sheet) {
    for (Bound bound : rule.bounds()) {
      line(sheet, bound.outcome(), bound.words(), bound.consequence());
    }
    List<String> names = new ArrayList<>(rule.situations().keySet());
    names.sort(null);
    for (String name : names) {
      Situation situation = rule.situations().get(name);
      line(
          sheet,
          situation.outcome(),
          "\"" + PageText.gaps(situation.headline()) + "\"",
          situation.consequence());
    }
    sheet.hanging("  basis      ", Basis.sentence(rule.basis(), rule.source()));
    if (!rule.reads().isEmpty()) {
      sheet.hanging("  reads      ", String.join(", ", rule.reads()));
    }
    if (rule.protectsPeople()) {
      sheet.hanging(
          "  people     ",
          "It protects people: a club can only make it stricter, and accepting a finding of it does"
              + " not take the finding away.");
    }
  }

  private static void line(Sheet sheet, Outcome outcome, String when, Consequence consequence) {
    String word = outcome.words();
    sheet.hanging(
        "  " + word + " ".repeat(Math.max(1, 11 - word.length())),
        when + " (" + consequence.word() + ": " + consequence.meaning() + ")");
  }

  /** Why it matters and what to do, unless an answer said so with its own numbers. */
  private static void reasons(RuleText rule, Sheet sheet) {
    sheet.blank();
    sheet.heading("Why it matters");
    sheet.paragraph(0, rule.why());
    if (!rule.cures().isEmpty()) {
      sheet.blank();
      sheet.heading("What to do");
      for (String cure : rule.cures()) {
        sheet.hanging("  - ", PageText.gaps(cure));
      }
    }
  }

  /** What the words mean that the rule's sentences use. */
  private static void words(RuleText rule, Sheet sheet) {
    List<Words.Word> words = Words.usedIn(rule.sentences());
    if (!words.isEmpty()) {
      sheet.blank();
      sheet.heading("Words");
      words.forEach(word -> sheet.hanging("  - ", word.term() + ": " + word.meaning()));
    }
  }
}
