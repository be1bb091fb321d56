package outshop.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import outshop.input.Shown;
import outshop.input.UnusableInput;
import outshop.rules.RuleEngine;
import outshop.sheets.ReadingsForm;

/** {@code new-readings}: writes an empty file of readings for a plan's bench sheet. */
final class NewReadingsCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "new-readings",
        List.of("PLAN", "FILE"),
        "write an empty file for the readings of a plan's bench sheet",
        List.of(PlanFiles.CATALOGUE));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Path file = Paths.of(given.operand(1));
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UsageFault(Shown.text(file.toString()) + " is there already; name another file");
    }
    PlanFiles files =
        PlanFiles.read(Paths.of(given.operand(0)), Paths.optional(given.value("--catalogue")));
    Check.Checked checked = new Check(RuleEngine.load()).checked(files.plan(), files.problems());
    OutFile.write(file, ReadingsForm.of(checked.sheets().bench()));
    around.say("Written: " + file);
    return Exit.OK;
  }
}
