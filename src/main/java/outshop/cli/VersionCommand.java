package outshop.cli;

import java.util.List;

/** {@code version}: the program's version and how many rules it holds. */
final class VersionCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec("version", List.of(), "the program's version", List.of());
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault {
    around.print("outshop " + Main.VERSION + "\n");
    return Exit.OK;
  }
}
