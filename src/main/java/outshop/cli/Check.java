package outshop.cli;

import java.util.List;
import java.util.function.Supplier;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.drawing.WiringDrawing;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.plan.Plan;
import outshop.plots.Plots;
import outshop.report.Lesson;
import outshop.report.Report;
import outshop.report.Reporting;
import outshop.rules.Judged;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;
import outshop.sheets.Sheets;

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

  /** A plan that was checked; what hangs on its report is drawn up when asked for. */
  public static final class Checked {
    private final Bench bench;
    private final List<Object> facts;
    private final Report report;

    private Checked(Bench bench, List<Object> facts, Report report) {
      this.bench = bench;
      this.facts = facts;
      this.report = report;
    }

    /** The report without plots. */
    public Report report() {
      return report;
    }

    /**
     * The report with the data of its plots.
     *
     * @param catalogue from which other parts could be chosen
     */
    public Report withPlots(Catalogue catalogue) {
      return report.with(Plots.of(bench, facts, catalogue.of(Kind.SPEAKER)));
    }

    public Sheets sheets() {
      return Sheets.of(bench, facts, report);
    }

    public WiringDrawing wiring() {
      return WiringDrawing.of(bench.circuit(), bench.plan());
    }
  }

  /**
   * Checks a plan.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  public Checked checked(Plan plan, List<Problem> problems) {
    Bench bench = Bench.of(plan, problems);
    List<Object> facts = Facts.of(bench);
    return new Checked(bench, facts, report(bench, engine.get().run(facts)));
  }

  /**
   * The report of a plan, without plots.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  public Report report(Plan plan, List<Problem> problems) {
    return checked(plan, problems).report();
  }

  /**
   * The report of a plan with the data of its plots.
   *
   * @param problems what the readers found in the plan and in the catalogue
   * @param catalogue from which other parts could be chosen
   */
  public Report report(Plan plan, List<Problem> problems, Catalogue catalogue) {
    return checked(plan, problems).withPlots(catalogue);
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
        bench.circuit(),
        bench.cases(),
        findings,
        rule -> book.find(rule).map(RuleText::protectsPeople).orElse(false),
        book.all().stream().map(RuleText::name).toList(),
        bench.problems());
  }
}
