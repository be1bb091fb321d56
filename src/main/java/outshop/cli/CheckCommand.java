package outshop.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import outshop.findings.Outcome;
import outshop.input.UnusableInput;
import outshop.render.json.JsonReport;
import outshop.render.terminal.Look;
import outshop.render.terminal.TerminalReport;
import outshop.report.Report;
import outshop.rules.RuleEngine;

/** {@code check}: judges a plan and reports. */
final class CheckCommand implements Command {
  private static final String FORMS =
      "the form of the report: text to read here, json for other programs, page for a browser and"
          + " for paper (one HTML file that needs nothing else); text if left out";

  @Override
  public Spec spec() {
    return new Spec(
        "check",
        List.of("PLAN"),
        "judge a plan by every rule and report, worst first",
        List.of(
            PlanFiles.CATALOGUE,
            Option.oneOf("--as", List.of("text", "json", "page"), FORMS),
            Option.valued("--to", "FILE", "write the report there; else it goes to the output"),
            Option.COLOUR,
            Option.flag(
                "--working", "show every step behind each number; json and page have them anyway"),
            Option.flag("--all", "show every finding, however many one rule has; likewise"),
            Option.flag(
                "--strict", "let warnings and what cannot be told count for the exit code")));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Path plan = Paths.of(given.operand(0));
    Optional<Path> named = Paths.optional(given.value("--catalogue"));
    Optional<Path> to = Paths.optional(given.value("--to"));
    Ahead<RuleEngine> engine = Ahead.of(RuleEngine::load);
    PlanFiles files = PlanFiles.read(plan, named);
    if (to.isPresent()) {
      OutFile.refuseInput("--to", to.get(), List.of(plan), files.catalogue());
    }
    Check.Checked checked = new Check(engine).checked(files.plan(), files.problems());
    Report report = checked.report();
    if (to.isPresent()) {
      OutFile.write(to.get(), text(checked, files, given, toFile(given)));
      around.say(TerminalReport.summary(report) + " (" + to.get() + ")");
    } else if (!isText(given)) {
      around.printUtf8(text(checked, files, given, toFile(given)));
    } else {
      String colour = given.value("--colour").orElse("auto");
      around.print(text(checked, files, given, around.look(around.colour(colour))));
    }
    return code(report, given.has("--strict"));
  }

  /** The page's classes are loaded only where a page is asked for. */
  private static String text(Check.Checked checked, PlanFiles files, Given given, Look look) {
    return switch (form(given)) {
      case "json" -> JsonReport.text(checked.withPlots(files.parts()), checked.sheets());
      case "page" -> Pages.report(checked, files);
      default -> TerminalReport.text(checked.report(), look, depth(given));
    };
  }

  private static TerminalReport.Depth depth(Given given) {
    return new TerminalReport.Depth(given.has("--working"), given.has("--all"));
  }

  private static boolean isText(Given given) {
    return form(given).equals("text");
  }

  private static String form(Given given) {
    return given.value("--as").orElse("text");
  }

  /** A file is no terminal: colours only if they were asked for by name. */
  private static Look toFile(Given given) {
    boolean colour = given.value("--colour").orElse("auto").equals("always");
    return new Look(Look.USUAL, colour, StandardCharsets.UTF_8);
  }

  static int code(Report report, boolean strict) {
    boolean found = report.count(Outcome.VIOLATION) > 0;
    boolean open = report.count(Outcome.WARNING) > 0 || report.count(Outcome.CANNOT_TELL) > 0;
    return found || (strict && open) ? Exit.FOUND : Exit.OK;
  }
}
