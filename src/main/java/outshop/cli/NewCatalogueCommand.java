package outshop.cli;

import java.nio.file.Path;
import java.util.List;
import outshop.catalogue.CatalogueWriter;
import outshop.input.UnusableInput;
import outshop.render.terminal.Sheet;

/** {@code new-catalogue}: writes the empty tables of a catalogue. */
final class NewCatalogueCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "new-catalogue",
        List.of("DIR"),
        "write empty catalogue tables to fill in; what is there already stays",
        List.of());
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    List<Path> files = CatalogueWriter.writeEmpty(Paths.of(given.operand(0)));
    Sheet sheet = new Sheet(around.look(false));
    sheet.paragraph(
        0,
        files.size()
            + " tables written to "
            + given.operand(0)
            + ", one for each kind of part. Open them in a spreadsheet: the rows that begin with #"
            + " tell what belongs in each column.");
    around.print(sheet.text());
    return Exit.OK;
  }
}
