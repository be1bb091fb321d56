package outshop.acceptance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import outshop.catalogue.Catalogue;
import outshop.catalogue.CatalogueReader;
import outshop.cli.Check;
import outshop.input.Problem;
import outshop.plan.Plan;
import outshop.plan.PlanReader;
import outshop.report.Report;
import outshop.rules.RuleEngine;

/** The sample catalogue and the demo plans, as a user has them. */
public final class Sample {
  public static final Path FOLDER = Path.of("catalog-sample");

  /** Loaded once: the rules are the same for every test. */
  public static final RuleEngine ENGINE = RuleEngine.load();

  private static final CatalogueReader.Read READ =
      CatalogueReader.read(FOLDER.resolve("catalogue"));

  private Sample() {}

  /** The sample catalogue. It must read without an error. */
  public static Catalogue catalogue() {
    List<Problem> errors =
        READ.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR).toList();
    if (!errors.isEmpty()) {
      throw new IllegalStateException(errors.toString());
    }
    return READ.catalogue();
  }

  /** What the reader found worth saying of the sample catalogue. */
  public static List<Problem> catalogueProblems() {
    return READ.problems();
  }

  /** Every demo plan, in order of name. */
  public static List<Path> plans() {
    try (Stream<Path> files = Files.list(FOLDER.resolve("plans"))) {
      return files.filter(p -> p.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A demo plan. It must read without an error. */
  public static Plan plan(Path path) {
    return usable(PlanReader.read(path, catalogue()));
  }

  /** A plan from a text. It must read without an error. */
  public static Plan plan(String name, byte[] bytes, Catalogue catalogue) {
    return usable(PlanReader.read(name, bytes, catalogue));
  }

  private static Plan usable(PlanReader.Read read) {
    if (!read.isUsable()) {
      throw new IllegalStateException(
          read.problems().stream().map(Problem::line).toList().toString());
    }
    return read.plan();
  }

  /** The report of a demo plan, as the program makes it. */
  public static Report report(Path path) {
    PlanReader.Read read = PlanReader.read(path, catalogue());
    List<Problem> problems = new ArrayList<>(catalogueProblems());
    problems.addAll(read.problems());
    return new Check(ENGINE).report(usable(read), problems, catalogue());
  }

  /** The report of a plan with nothing found in its files. */
  public static Report report(Plan plan) {
    return new Check(ENGINE).report(plan, List.of(), catalogue());
  }
}
