package outshop.cli;

import java.util.List;
import java.util.function.Supplier;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.plan.Plan;
import outshop.report.Lesson;
import outshop.report.Report;
import outshop.report.Reporting;
import outshop.rules.Judged;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/**
 * The main job, in the order of the flow: plan, circuit, figures, rules, findings, ranking, report.
 */
public final class Check {
  private final Supplier<RuleEngine> engine;

  public Check(RuleEngine engine) {
    this(() -> engine);
  }

  /** A check whose engine is asked for when the figures are there. */
  Check(Supplier<RuleEngine> engine) {
    this.engine = engine;
  }

  /**
   * The report of a plan.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  public Report report(Plan plan, List<Problem> problems) {
    Bench bench = Bench.of(plan, problems);
    List<Object> facts = Facts.of(bench);
    return report(bench, engine.get().run(facts));
  }

  /**
   * What one rule makes of a plan.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  Lesson lesson(RuleText rule, Plan plan, List<Problem> problems) {
    Bench bench = Bench.of(plan, problems);
    Judged judged = engine.get().judge(Facts.of(bench));
    return Lesson.of(
        rule.name(),
        rule.reads(),
        rule::boundsAt,
        plan,
        report(bench, judged.findings()),
        judged.silences());
  }

  private Report report(Bench bench, List<Finding> findings) {
    RuleBook book = engine.get().book();
    return Reporting.of(
        bench.plan(),
        bench.cases(),
        findings,
        rule -> book.find(rule).map(RuleText::protectsPeople).orElse(false),
        book.all().stream().map(RuleText::name).toList(),
        bench.problems());
  }
}
