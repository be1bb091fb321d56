package outshop.outside;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Predicate;
import outshop.acceptance.Sample;
import outshop.catalogue.Catalogue;
import outshop.circuit.PackValues;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Problem;
import outshop.plan.PlanReader;
import outshop.ranking.Ranking;
import outshop.rulecases.Fragment;

/** A plan that puts published inputs before the program, through the whole flow. */
final class Trial {
  private static final Catalogue NOTHING = new Catalogue(List.of());

  private final Fragment plan;

  private Trial(Fragment plan) {
    this.plan = plan;
  }

  /** The plan that the rules' examples start from: complete, and nothing wrong with it. */
  static Trial base() {
    return new Trial(Fragment.base());
  }

  /** A plan of a few parts and nothing else. */
  static Trial parts(String... parts) {
    String text = "outshop_plan: 1\nparts:\n  " + String.join("\n  ", parts) + "\n";
    return new Trial(Fragment.of("trial", text.getBytes(StandardCharsets.UTF_8)));
  }

  /** Changes what stands at a path; {@code (remove)} takes it away. */
  Trial with(String path, Object to) {
    plan.change(path, to);
    return this;
  }

  Bench bench() {
    PlanReader.Read read = PlanReader.read("trial", plan.bytes(), NOTHING);
    List<Problem> errors =
        read.problems().stream().filter(p -> p.severity() == Problem.Severity.ERROR).toList();
    if (!errors.isEmpty()) {
      throw new IllegalStateException(errors.toString());
    }
    return Bench.of(read.plan(), read.problems());
  }

  PackValues pack() {
    return bench().pack().orElseThrow();
  }

  /** The one fact of a kind. */
  <T> T fact(Class<T> kind) {
    return fact(kind, fact -> true);
  }

  /** The one fact of a kind that is meant. */
  <T> T fact(Class<T> kind, Predicate<T> meant) {
    List<T> found =
        Facts.of(bench()).stream().filter(kind::isInstance).map(kind::cast).filter(meant).toList();
    if (found.size() != 1) {
      throw new IllegalStateException(kind.getSimpleName() + " found: " + found);
    }
    return found.get(0);
  }

  /** The worst that a rule answers. */
  Outcome outcome(String rule) {
    List<Finding> answers =
        Ranking.ranked(Sample.ENGINE.run(Facts.of(bench()))).stream()
            .filter(finding -> finding.rule().equals(rule))
            .toList();
    if (answers.isEmpty()) {
      throw new IllegalStateException(rule + " says nothing");
    }
    return answers.get(0).outcome();
  }
}
