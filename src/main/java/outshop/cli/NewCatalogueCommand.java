package outshop.cli;

import java.nio.file.Path;
import java.util.List;
import outshop.catalogue.CatalogueWriter;
import outshop.input.UnusableInput;

/** {@code new-catalogue}: writes the empty tables of a catalogue. */
final class NewCatalogueCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "new-catalogue",
        List.of("DIR"),
        "write empty catalogue tables to fill in; never over tables that are there",
        List.of());
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault, UnusableInput {
    List<Path> files = CatalogueWriter.writeEmpty(Paths.of(given.operand(0)));
    around.say(
        files.size()
            + " tables written to "
            + given.operand(0)
            + ", one for each kind of part. Open them in a spreadsheet: the rows that begin with #"
            + " tell what belongs in each column.");
    return Exit.OK;
  }
}
