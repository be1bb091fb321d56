package outshop.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import outshop.input.UnusableInput;
import outshop.plan.MeasuringSheet;
import outshop.render.terminal.Look;
import outshop.render.terminal.Sheet;

/** {@code measuring-sheet}: what is still to be measured, and how. */
final class MeasuringSheetCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "measuring-sheet",
        List.of("[PLAN]"),
        "list what to measure and how; for a plan, only what it does not state yet",
        List.of(
            PlanFiles.CATALOGUE,
            Option.valued("--to", "FILE", "write it there; else it goes to the output")));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    Optional<Path> plan = Paths.optional(given.optionalOperand(0));
    Optional<Path> to = Paths.optional(given.value("--to"));
    String text =
        plan.isEmpty()
            ? MeasuringSheet.blank()
            : MeasuringSheet.of(
                PlanFiles.read(plan.get(), Paths.optional(given.value("--catalogue"))).plan());
    if (to.isPresent()) {
      OutFile.write(to.get(), text);
      around.say("Written: " + to.get());
    } else {
      Sheet sheet = new Sheet(new Look(Look.WIDEST, false, around.charset()));
      for (String line : text.split("\n")) {
        sheet.verbatim(0, line);
      }
      around.print(sheet.text());
    }
    return Exit.OK;
  }
}
