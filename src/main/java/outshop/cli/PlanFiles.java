package outshop.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Catalogue;
import outshop.catalogue.CatalogueReader;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.input.UnusableInput;
import outshop.plan.OpenPart;
import outshop.plan.Plan;
import outshop.plan.PlanReader;

/**
 * A plan and the catalogue it draws on, both read.
 *
 * @param open the places for parts that the plan leaves open
 * @param catalogue the folder or table it was read from; empty if none was found
 * @param parts what the catalogue holds
 * @param problems what is worth saying about the files; none of them an error
 */
record PlanFiles(
    Plan plan,
    List<OpenPart> open,
    Optional<Path> catalogue,
    Catalogue parts,
    List<Problem> problems) {
  static final Option CATALOGUE =
      Option.valued(
          "--catalogue",
          "DIR",
          "the catalogue; else a folder \"catalogue\" beside the plan or beside the plan's folder");

  private static final String FOLDER = "catalogue";

  /** Reads both. Errors: {@link UnusableInput} with every problem of both files. */
  static PlanFiles read(Path plan, Optional<Path> named) throws UnusableInput {
    Optional<Path> folder = named.or(() -> found(plan));
    List<Problem> problems = new ArrayList<>();
    Catalogue catalogue = new Catalogue(List.of());
    boolean usable = true;
    if (folder.isPresent()) {
      CatalogueReader.Read read = CatalogueReader.read(folder.get());
      catalogue = read.catalogue();
      problems.addAll(read.problems());
      usable = read.isUsable();
    } else if (Files.exists(plan) && !Files.isDirectory(plan)) {
      problems.add(noCatalogue(plan));
    }
    PlanReader.Read read = PlanReader.read(plan, catalogue);
    problems.addAll(read.problems());
    if (!usable || !read.isUsable()) {
      throw new UnusableInput(problems);
    }
    return new PlanFiles(read.plan(), read.open(), folder, catalogue, problems);
  }

  /** The catalogue that goes without saying: beside the plan, or beside the plan's folder. */
  static Optional<Path> found(Path plan) {
    Path folder = plan.toAbsolutePath().getParent();
    for (int up = 0; up < 2 && folder != null; up++) {
      if (Files.isDirectory(folder.resolve(FOLDER))) {
        return Optional.of(shortest(folder.resolve(FOLDER), plan));
      }
      folder = folder.getParent();
    }
    return Optional.empty();
  }

  /** As the user would name it: from where the plan is named from, so no path of the machine. */
  private static Path shortest(Path folder, Path plan) {
    if (plan.isAbsolute()) {
      return folder;
    }
    Path here = Path.of("").toAbsolutePath();
    return here.relativize(folder.normalize());
  }

  private static Problem noCatalogue(Path plan) {
    return new Problem(
        Problem.Severity.NOTE,
        Place.whole(plan.toString()),
        "",
        "no catalogue was found, so only parts written in the plan itself are known",
        "a folder \"" + FOLDER + "\" beside the plan or beside its folder, or --catalogue DIR");
  }
}
