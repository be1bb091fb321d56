package outshop.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import outshop.catalogue.CatalogueReader;
import outshop.input.Problem;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.plan.PlanReader;

/** The demo plans, read. */
record Demo(Plan plan, List<Problem> problems) {
  static final Path CATALOGUE = Path.of("catalog-sample/catalogue");
  static final Path PLANS = Path.of("catalog-sample/plans");

  /** The plan that single measurements use. */
  static final Path ONE = PLANS.resolve("sallowmere-tank.yaml");

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(PLANS)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
  }

  static List<Demo> all() throws IOException {
    CatalogueReader.Read catalogue = CatalogueReader.read(CATALOGUE);
    List<Demo> all = new ArrayList<>();
    for (Path file : files()) {
      all.add(of(file, catalogue));
    }
    return all;
  }

  static Demo of(Path file, CatalogueReader.Read catalogue) {
    PlanReader.Read read = PlanReader.read(file, catalogue.catalogue());
    if (!read.isUsable()) {
      throw new IllegalStateException(file + " cannot be used");
    }
    List<Problem> problems = new ArrayList<>(catalogue.problems());
    problems.addAll(read.problems());
    return new Demo(read.plan(), problems);
  }

  /** The same plan as one that was never asked anything, its parts too. */
  Demo fresh() {
    List<Fitted> parts = new ArrayList<>();
    plan.parts().forEach(f -> parts.add(new Fitted(f.name(), f.part(), f.place())));
    plan.materials().forEach(f -> parts.add(new Fitted(f.name(), f.part(), f.place())));
    return new Demo(plan.withParts(parts), problems);
  }

}
