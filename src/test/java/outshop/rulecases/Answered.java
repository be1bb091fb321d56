package outshop.rulecases;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import outshop.acceptance.Sample;
import outshop.catalogue.Catalogue;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.plan.Plan;
import outshop.plan.PlanReader;
import outshop.ranking.Ranking;

/**
 * An example and how its rule answered it.
 *
 * @param plan the base plan with the example's changes
 * @param answers of the example's rule alone, at the place it means, worst first
 */
public record Answered(Example example, Plan plan, List<Finding> answers) {
  private static final Map<Example, Answered> ANSWERED = new ConcurrentHashMap<>();

  /** Every example of every rule. */
  public static List<Answered> all() {
    return Example.all().stream().map(Answered::to).toList();
  }

  /** One example; it is run once, for all tests that look at the answers. */
  static Answered to(Example example) {
    return ANSWERED.computeIfAbsent(example, Answered::run);
  }

  /** Those of one rule. */
  public static List<Answered> of(String rule) {
    return all().stream().filter(a -> a.example().rule().equals(rule)).toList();
  }

  /** The plan that every example starts from. */
  static Plan basePlan() {
    return Sample.plan("base-plan.yaml", Fragment.base().bytes(), new Catalogue(List.of()));
  }

  private static Answered run(Example example) {
    Fragment fragment = Fragment.base();
    example.change().forEach(fragment::change);
    PlanReader.Read read = PlanReader.read("example", fragment.bytes(), new Catalogue(List.of()));
    if (!read.isUsable()) {
      throw new IllegalStateException(example + ": " + read.problems());
    }
    List<Finding> found = Sample.ENGINE.run(Facts.of(Bench.of(read.plan(), read.problems())));
    List<Finding> answers =
        Ranking.ranked(found).stream()
            .filter(f -> f.rule().equals(example.rule()))
            .filter(f -> example.at().map(f.at().name()::equals).orElse(true))
            .toList();
    return new Answered(example, read.plan(), answers);
  }
}
