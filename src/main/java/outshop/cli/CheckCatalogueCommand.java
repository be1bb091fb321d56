package outshop.cli;

import java.util.List;
import outshop.catalogue.CatalogueReader;
import outshop.catalogue.Kind;
import outshop.input.Problem;
import outshop.render.terminal.Sheet;

/** {@code check-catalogue}: reads a catalogue and tells what is wrong with it. */
final class CheckCatalogueCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "check-catalogue",
        List.of("DIR"),
        "read a catalogue and list what is wrong or unlikely in it",
        List.of(Option.flag("--strict", "end with 1 where a value is unlikely")));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault {
    CatalogueReader.Read read = CatalogueReader.read(Paths.of(given.operand(0)));
    if (!read.problems().isEmpty()) {
      around.complain(Main.problems(read.problems(), around));
    }
    Sheet sheet = new Sheet(around.look(false));
    for (Kind kind : Kind.values()) {
      int parts = read.catalogue().of(kind).size();
      if (parts > 0) {
        sheet.hanging("  " + kind.word() + " ".repeat(16 - kind.word().length()), "" + parts);
      }
    }
    int errors = count(read, Problem.Severity.ERROR);
    int unlikely = count(read, Problem.Severity.UNLIKELY);
    sheet.paragraph(
        0,
        counted(read.catalogue().all().size(), "part")
            + "; "
            + counted(errors, "error")
            + ", "
            + counted(unlikely, "unlikely value")
            + ", "
            + counted(count(read, Problem.Severity.NOTE), "note"));
    around.print(sheet.text());
    if (errors > 0) {
      return Exit.UNUSABLE;
    }
    return unlikely > 0 && given.has("--strict") ? Exit.FOUND : Exit.OK;
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  private static int count(CatalogueReader.Read read, Problem.Severity severity) {
    int count = 0;
    for (Problem problem : read.problems()) {
      count += problem.severity() == severity ? 1 : 0;
    }
    return count;
  }
}
