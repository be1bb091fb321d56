package outshop.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import outshop.input.Nearest;
import outshop.input.Shown;
import outshop.input.UnusableInput;
import outshop.plan.MeasuringSheet;
import outshop.render.sheet.SheetPage;
import outshop.render.terminal.Look;
import outshop.render.terminal.SheetText;
import outshop.rules.RuleEngine;
import outshop.sheets.Sheets;

/** {@code sheet}: one of the papers that leave the workshop with the locomotive. */
final class SheetCommand implements Command {
  static final List<String> KINDS = List.of("measuring", "buying", "wiring", "bench", "owner");

  @Override
  public Spec spec() {
    return new Spec(
        "sheet",
        List.of("KIND", "PLAN"),
        "draw up a sheet of a plan: " + String.join(", ", KINDS),
        List.of(
            PlanFiles.CATALOGUE,
            Option.oneOf(
                "--as", List.of("text", "page"), "text, or a page to print; text if left out"),
            Option.valued("--to", "FILE", "write it there; else it goes to the output")));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    String kind = kind(given.operand(0));
    Path plan = Paths.of(given.operand(1));
    Optional<Path> to = Paths.optional(given.value("--to"));
    PlanFiles files = PlanFiles.read(plan, Paths.optional(given.value("--catalogue")));
    if (to.isPresent()) {
      OutFile.refuseInput("--to", to.get(), List.of(plan), files.catalogue());
    }
    Check.Checked checked = new Check(RuleEngine.load()).checked(files.plan(), files.problems());
    boolean page = given.value("--as").orElse("text").equals("page");
    if (to.isPresent()) {
      Look look = new Look(Look.USUAL, false, StandardCharsets.UTF_8);
      OutFile.write(
          to.get(), page ? page(kind, checked) : text(kind, checked.sheets(), files, look));
      around.say("Written: " + to.get());
    } else if (page) {
      around.printUtf8(page(kind, checked));
    } else {
      around.print(text(kind, checked.sheets(), files, around.look(false)));
    }
    return Exit.OK;
  }

  private static String kind(String typed) throws UsageFault {
    if (!KINDS.contains(typed)) {
      throw new UsageFault(
          "there is no sheet \""
              + Shown.text(typed)
              + '"'
              + Nearest.hint(typed, KINDS)
              + "; there are "
              + String.join(", ", KINDS));
    }
    return typed;
  }

  private static String page(String kind, Check.Checked checked) {
    Sheets sheets = checked.sheets();
    return switch (kind) {
      case "measuring" -> SheetPage.of(sheets.measuring());
      case "buying" -> SheetPage.of(sheets.buying());
      case "wiring" -> Pages.wiringSheet(checked, sheets);
      case "bench" -> SheetPage.of(sheets.bench());
      case "owner" -> SheetPage.of(sheets.owner());
      default -> throw new IllegalStateException("no sheet " + kind);
    };
  }

  private static String text(String kind, Sheets sheets, PlanFiles files, Look look) {
    return switch (kind) {
      case "measuring" -> MeasuringSheet.of(files.plan());
      case "buying" -> SheetText.buying(sheets.buying(), look);
      case "wiring" -> SheetText.wiring(sheets.wiring(), look);
      case "bench" -> SheetText.bench(sheets.bench(), look);
      case "owner" -> SheetText.owner(sheets.owner(), look);
      default -> throw new IllegalStateException("no sheet " + kind);
    };
  }
}
