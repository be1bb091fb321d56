package outshop.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Catalogue;
import outshop.catalogue.CatalogueReader;
import outshop.input.Shown;
import outshop.plan.PlanWriter;

/** {@code new-plan}: writes a plan to start from. */
final class NewPlanCommand implements Command {
  @Override
  public Spec spec() {
    return new Spec(
        "new-plan",
        List.of("FILE"),
        "write a plan to start from, with every key explained",
        List.of(
            PlanFiles.CATALOGUE,
            Option.valued("--title", "TEXT", "what the plan is called"),
            Option.valued(
                "--motors", "NAMES", "your names for the motors, with commas; motor if left out"),
            Option.valued("--lamps", "NAMES", "your names for the lamps, with commas"),
            Option.valued("--bays", "NAMES", "your names for the bays, with commas"),
            Option.valued("--smoke", "NAMES", "your names for the smoke heaters, with commas")));
  }

  @Override
  public int run(Given given, Surroundings around) throws UsageFault {
    Path file = Paths.of(given.operand(0));
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new UsageFault(Shown.text(file.toString()) + " is there already; name another file");
    }
    OutFile.write(file, PlanWriter.starter(start(given), catalogue(given, file)));
    around.say("Written: " + file);
    return Exit.OK;
  }

  private static PlanWriter.Start start(Given given) throws UsageFault {
    try {
      return new PlanWriter.Start(
          given.value("--title").orElse(""),
          names(given.value("--motors").orElse("motor")),
          names(given.value("--lamps").orElse("")),
          names(given.value("--bays").orElse("")),
          names(given.value("--smoke").orElse("")));
    } catch (IllegalArgumentException e) {
      throw new UsageFault(e.getMessage());
    }
  }

  private static List<String> names(String list) {
    List<String> names = new ArrayList<>();
    for (String name : list.split(",")) {
      if (!name.isBlank()) {
        names.add(name.strip());
      }
    }
    return names;
  }

  /** Only for the examples, so that its faults do not matter here. */
  private static Catalogue catalogue(Given given, Path file) throws UsageFault {
    Optional<Path> folder =
        Paths.optional(given.value("--catalogue")).or(() -> PlanFiles.found(file));
    return folder.isEmpty()
        ? new Catalogue(List.of())
        : CatalogueReader.read(folder.get()).catalogue();
  }
}
