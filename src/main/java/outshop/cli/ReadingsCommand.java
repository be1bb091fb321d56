package outshop.cli;

import java.nio.file.Path;
import java.util.List;
import outshop.input.UnusableInput;
import outshop.render.terminal.ReadingsText;
import outshop.rules.RuleEngine;
import outshop.sheets.BenchSheet;
import outshop.sheets.ReadingsFile;
import outshop.sheets.ReadingsJudged;

/** {@code readings}: holds the readings of a filled-in bench sheet against their windows. */
final class ReadingsCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "readings",
        List.of("PLAN", "READINGS"),
        "judge the readings of a filled-in bench sheet and tell what to do next",
        List.of(PlanFiles.CATALOGUE, Option.COLOUR));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Path readings = Paths.of(given.operand(1));
    PlanFiles files =
        PlanFiles.read(Paths.of(given.operand(0)), Paths.optional(given.value("--catalogue")));
    BenchSheet sheet =
        new Check(RuleEngine.load()).checked(files.plan(), files.problems()).sheets().bench();
    ReadingsFile read = ReadingsFile.read(readings, sheet);
    if (!read.isUsable()) {
      throw new UnusableInput(read.problems());
    }
    ReadingsJudged judged = ReadingsJudged.of(sheet, read.readings());
    String colour = given.value(Option.COLOUR.name()).orElse("auto");
    around.print(ReadingsText.text(judged, around.look(around.colour(colour))));
    return judged.isOff() ? Exit.FOUND : Exit.OK;
  }
}
