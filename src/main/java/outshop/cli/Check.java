package outshop.cli;

import java.util.List;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.plan.Plan;
import outshop.plots.Plot;
import outshop.plots.Plots;
import outshop.report.Lesson;
import outshop.report.Report;
import outshop.report.Reporting;
import outshop.rules.Judged;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/**
 * The main job, in the order of the flow: plan, circuit, figures, rules, findings, ranking, report.
 */
public final class Check {
  private final RuleEngine engine;

  public Check(RuleEngine engine) {
    this.engine = engine;
  }

  /**
   * The report of a plan of which only the plan is at hand.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  public Report report(Plan plan, List<Problem> problems) {
    return report(plan, problems, new Catalogue(List.of()));
  }

  /**
   * The report of a plan.
   *
   * @param problems what the readers found in the plan and in the catalogue
   * @param catalogue from which other parts could be chosen
   */
  public Report report(Plan plan, List<Problem> problems, Catalogue catalogue) {
    Bench bench = Bench.of(plan, problems);
    List<Object> facts = Facts.of(bench);
    return report(bench, engine.run(facts), Plots.of(bench, facts, catalogue.of(Kind.SPEAKER)));
  }

  /**
   * What one rule makes of a plan.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  Lesson lesson(RuleText rule, Plan plan, List<Problem> problems) {
    Bench bench = Bench.of(plan, problems);
    Judged judged = engine.judge(Facts.of(bench));
    return Lesson.of(
        rule.name(),
        rule.reads(),
        rule::boundsAt,
        plan,
        report(bench, judged.findings(), List.of()),
        judged.silences());
  }

  private Report report(Bench bench, List<Finding> findings, List<Plot> plots) {
    return Reporting.of(
        bench.plan(),
        bench.circuit(),
        bench.cases(),
        findings,
        rule -> engine.book().find(rule).map(RuleText::protectsPeople).orElse(false),
        engine.book().all().stream().map(RuleText::name).toList(),
        bench.problems(),
        plots);
  }
}
