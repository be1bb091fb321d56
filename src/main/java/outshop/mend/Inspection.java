package outshop.mend;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.plan.Edit;
import outshop.plan.EditedPlan;
import outshop.plan.Plan;
import outshop.report.Reporting;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/**
 * The check alone: from a plan to what counts of its findings, by the same figures and rules as a
 * report. May be used from several threads.
 */
final class Inspection {
  private final RuleEngine engine;
  private final Plan plan;
  private final List<Problem> problems;

  /**
   * An inspection of a plan and of what can be made of it.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  Inspection(RuleEngine engine, Plan plan, List<Problem> problems) {
    this.engine = engine;
    this.plan = plan;
    this.problems = List.copyOf(problems);
  }

  /**
   * What a check sees.
   *
   * @param plan as it was checked
   * @param findings those that count, whatever their outcome, in no particular order, without their
   *     working
   * @param facts what the rules were given
   */
  record Seen(Plan plan, List<Finding> findings, List<Object> facts) {}

  /** The plan as it is. */
  Seen asItIs() {
    return see(plan, problems);
  }

  /** The plan with changes made. */
  Seen with(Collection<Change> changes) {
    List<Edit> edits = changes.stream().flatMap(c -> c.edits().stream()).toList();
    return see(EditedPlan.of(plan, edits), left(edits));
  }

  private Seen see(Plan checked, List<Problem> about) {
    List<Object> facts = Facts.of(Bench.of(checked, about));
    List<Finding> counted =
        Reporting.counted(
            checked,
            engine.run(facts),
            rule -> engine.book().find(rule).map(RuleText::protectsPeople).orElse(false));
    return new Seen(checked, counted, facts);
  }

  /** What the readers said of values that an edit takes away is no longer true. */
  private List<Problem> left(List<Edit> edits) {
    List<Problem> left = new ArrayList<>();
    for (Problem problem : problems) {
      boolean gone =
          problem.place().file().equals(plan.file())
              && edits.stream().anyMatch(e -> isUnder(problem.place().path(), path(e)));
      if (!gone) {
        left.add(problem);
      }
    }
    return left;
  }

  private static boolean isUnder(String path, String above) {
    return path.equals(above) || path.startsWith(above + ".");
  }

  private static String path(Edit edit) {
    if (edit instanceof Edit.Say say) {
      return say.path();
    }
    if (edit instanceof Edit.Measure measure) {
      return measure.path();
    }
    if (edit instanceof Edit.Drop drop) {
      return drop.path();
    }
    return edit instanceof Edit.Fit fit ? fit.path() : "";
  }
}
