package outshop.mend;

import java.util.List;
import java.util.Optional;
import outshop.findings.Finding;
import outshop.plan.Edit;
import outshop.plan.Plan;

/**
 * Changes that go together, and what the whole check says of the plan with them made.
 *
 * @param clears what was found before and is gone, worst first
 * @param left what was found before and stays, advice apart
 * @param brings what is found only now: the price, beside what it costs
 * @param cost the difference in price; empty where a price is not stated
 * @param givesUp what the owner gives up, in words
 * @param before figures of the plan as it is
 * @param after figures of the mended plan
 * @param plan the mended plan
 */
public record Mend(
    List<Change> changes,
    List<Finding> clears,
    List<Finding> left,
    List<Finding> brings,
    Optional<Double> cost,
    List<String> givesUp,
    Effects before,
    Effects after,
    Plan plan) {

  public Mend {
    changes = List.copyOf(changes);
    clears = List.copyOf(clears);
    left = List.copyOf(left);
    brings = List.copyOf(brings);
    givesUp = List.copyOf(givesUp);
  }

  /** Every edit of every change, in order. */
  public List<Edit> edits() {
    return changes.stream().flatMap(c -> c.edits().stream()).toList();
  }
}
