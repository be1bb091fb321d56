package outshop.mend;

import java.util.List;
import java.util.Optional;
import outshop.findings.Finding;
import outshop.plan.Plan;

/**
 * What can be done about a plan.
 *
 * @param plan as it is
 * @param toClear what is to go, worst first; nothing where nothing is wrong
 * @param mends the best that clear all of it, best first
 * @param more how many more were found beyond those
 * @param nearest where nothing clears all: the changes that clear the most and bring no new fault
 * @param needs where nothing clears all: what parts would have to be like
 * @param tally how far the search went
 */
public record Mending(
    Plan plan,
    List<Finding> toClear,
    List<Mend> mends,
    int more,
    Optional<Mend> nearest,
    List<Need> needs,
    Tally tally) {

  public Mending {
    toClear = List.copyOf(toClear);
    mends = List.copyOf(mends);
    needs = List.copyOf(needs);
  }

  /**
   * How far the search went.
   *
   * @param changes single changes that there are
   * @param checks whole checks that were made
   * @param limit the most checks that it may make
   * @param allUpTo every set of so many changes was tried, or left out because it cannot reach all
   *     that must go
   * @param atLeast so many changes are needed at least: so many findings have none in common
   * @param cut whether the limit ended the search, or sets were left out, so that not all was tried
   */
  public record Tally(int changes, int checks, int limit, int allUpTo, int atLeast, boolean cut) {}

  /** The plan's own title. */
  public String title() {
    return plan.title();
  }

  /** The plan's file as the user named it. */
  public String planFile() {
    return plan.file();
  }
}
