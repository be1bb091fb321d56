package outshop.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Catalogue;
import outshop.input.Problem;
import outshop.input.Tree;

/** Reads a plan. Everything wrong with it is reported at once, in the order of the file. */
public final class PlanReader {

  /**
   * A plan as far as it could be read, and what is wrong with it.
   *
   * @param plan holds what could be read; empty where the file could not be read at all
   * @param open the places where any part of a kind will do; the plan has no part there
   */
  public record Read(Plan plan, List<Problem> problems, List<OpenPart> open) {
    public Read {
      problems = List.copyOf(problems);
      open = List.copyOf(open);
    }

    /** Whether nothing in it is an error, so that the plan can be checked. */
    public boolean isUsable() {
      return problems.stream().noneMatch(p -> p.severity() == Problem.Severity.ERROR);
    }
  }

  private PlanReader() {}

  /** Reads a plan from a file; one that cannot be opened is a problem like any other. */
  public static Read read(Path path, Catalogue catalogue) {
    return read(path.toString(), Tree.read(path.toString(), path), catalogue);
  }

  /**
   * Reads a plan from bytes. Never throws for what stands in them.
   *
   * @param name the plan's name for messages
   */
  public static Read read(String name, byte[] bytes, Catalogue catalogue) {
    return read(name, Tree.read(name, bytes), catalogue);
  }

  private static Read read(String name, Tree.Read tree, Catalogue catalogue) {
    Optional<Tree.Node> root = tree.root();
    if (root.isEmpty()) {
      Plan nothing = new Plan(name, java.util.Map.of(), List.of(), List.of(), List.of());
      return new Read(nothing, tree.problems(), List.of());
    }
    Problems problems = new Problems(name);
    problems.addAll(tree.problems());
    PlanWalk walk = new PlanWalk(problems, catalogue);
    Plan plan = walk.plan(root.get());
    return new Read(plan, problems.sorted(), walk.open());
  }
}
