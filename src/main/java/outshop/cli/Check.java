package outshop.cli;

import java.util.List;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.plan.Plan;
import outshop.report.Lesson;
import outshop.report.Report;
import outshop.report.Reporting;
import outshop.rules.Judged;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;
import outshop.sheets.Sheets;

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
    return checked(plan, problems).report();
  }

  /** A plan's report, and its sheets from the same figures. */
  public static final class Checked {
    private final Bench bench;
    private final List<Object> facts;
    private final Report report;

    private Checked(Bench bench, List<Object> facts, Report report) {
      this.bench = bench;
      this.facts = facts;
      this.report = report;
    }

    public Report report() {
      return report;
    }

    /** Drawn up when asked for. */
    public Sheets sheets() {
      return Sheets.of(bench, facts, report);
    }
  }

  /**
   * The report of a plan, and its sheets.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  public Checked checked(Plan plan, List<Problem> problems) {
    Bench bench = Bench.of(plan, problems);
    List<Object> facts = Facts.of(bench);
    return new Checked(bench, facts, report(bench, engine.run(facts)));
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
        report(bench, judged.findings()),
        judged.silences());
  }

  private Report report(Bench bench, List<Finding> findings) {
    return Reporting.of(
        bench.plan(),
        bench.cases(),
        findings,
        rule -> engine.book().find(rule).map(RuleText::protectsPeople).orElse(false),
        engine.book().all().stream().map(RuleText::name).toList(),
        bench.problems());
  }
}
