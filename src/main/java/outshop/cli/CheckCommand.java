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
  @Override
  public Spec spec() {
    return new Spec(
        "check",
        List.of("PLAN"),
        "judge a plan by every rule and report, worst first",
        List.of(
            PlanFiles.CATALOGUE,
            Option.oneOf(
                "--as", List.of("text", "json"), "the form of the report; text if left out"),
            Option.valued("--to", "FILE", "write the report there; else it goes to the output"),
            Option.COLOUR,
            Option.flag("--working", "show every step behind each number"),
            Option.flag("--all", "show every finding, however many one rule has"),
            Option.flag(
                "--strict", "let warnings and what cannot be told count for the exit code")));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Path plan = Paths.of(given.operand(0));
    Optional<Path> named = Paths.optional(given.value("--catalogue"));
    Optional<Path> to = Paths.optional(given.value("--to"));
    PlanFiles files = PlanFiles.read(plan, named);
    if (to.isPresent()) {
      OutFile.refuseInput("--to", to.get(), plan, files.catalogue());
    }
    Report report = new Check(RuleEngine.load()).report(files.plan(), files.problems());
    if (to.isPresent()) {
      OutFile.write(to.get(), text(report, given, toFile(given)));
      around.say(TerminalReport.summary(report) + " (" + to.get() + ")");
    } else if (isJson(given)) {
      around.printUtf8(JsonReport.text(report));
    } else {
      String colour = given.value("--colour").orElse("auto");
      around.print(text(report, given, around.look(around.colour(colour))));
    }
    return code(report, given.has("--strict"));
  }

  private static String text(Report report, Given given, Look look) {
    if (isJson(given)) {
      return JsonReport.text(report);
    }
    TerminalReport.Depth depth =
        new TerminalReport.Depth(given.has("--working"), given.has("--all"));
    return TerminalReport.text(report, look, depth);
  }

  private static boolean isJson(Given given) {
    return given.value("--as").orElse("text").equals("json");
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
