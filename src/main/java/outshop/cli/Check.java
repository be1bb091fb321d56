package outshop.cli;

import java.util.List;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.plan.Plan;
import outshop.report.Report;
import outshop.report.Reporting;
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
   * The report of a plan.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  public Report report(Plan plan, List<Problem> problems) {
    Bench bench = Bench.of(plan, problems);
    List<Finding> findings = engine.run(Facts.of(bench));
    return Reporting.of(
        plan,
        bench.cases(),
        findings,
        rule -> engine.book().find(rule).map(RuleText::protectsPeople).orElse(false),
        engine.book().all().stream().map(RuleText::name).toList(),
        problems);
  }
}
