package outshop.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Catalogue;
import outshop.findings.Finding;
import outshop.input.Problem;
import outshop.plan.Plan;
import outshop.rules.RuleEngine;

/** Finds the smallest changes that clear what is wrong with a plan. */
public final class Mender {
  /** More changes than this are another plan. */
  public static final int MOST_CHANGES = 12;

  private final RuleEngine engine;
  private final Catalogue catalogue;
  private final List<Problem> problems;

  /**
   * What is asked for.
   *
   * @param warningsToo whether warnings must go as well as violations
   * @param best how many mends are wanted
   * @param limit the most whole checks that are made
   * @param threads how many work side by side; the answer is the same whatever their number
   */
  public record Aim(boolean warningsToo, int best, int limit, int threads) {
    /** So many checks take some seconds. */
    public static final int USUAL_LIMIT = 2500;

    /** Errors: {@link IllegalArgumentException} for a number below one. */
    public Aim {
      if (best < 1 || limit < 1 || threads < 1) {
        throw new IllegalArgumentException("each is at least one");
      }
    }
  }

  /**
   * A mender for plans that draw on a catalogue.
   *
   * @param problems what the readers found in the plan and in the catalogue
   */
  public Mender(RuleEngine engine, Catalogue catalogue, List<Problem> problems) {
    this.engine = engine;
    this.catalogue = catalogue;
    this.problems = List.copyOf(problems);
  }

  /** Every change of one step that could help some plan; which help this one, the search finds. */
  public static List<Change> changes(Plan plan, Catalogue catalogue) {
    List<Change> changes = new ArrayList<>(PartChanges.of(plan, catalogue));
    changes.addAll(WiringChanges.of(plan));
    changes.addAll(SettingChanges.of(plan, catalogue));
    return changes;
  }

  /** What can be done about a plan. */
  public Mending mend(Plan plan, Aim aim) {
    Inspection inspection = new Inspection(engine, plan, problems);
    Inspection.Seen asItIs = inspection.asItIs();
    Faults faults = new Faults(engine.book(), aim.warningsToo(), asItIs);
    List<Finding> toClear = List.copyOf(faults.standing(asItIs, false).values());
    if (toClear.isEmpty()) {
      Mending.Tally tally = new Mending.Tally(0, 1, aim.limit(), 0, 0, false);
      return new Mending(plan, toClear, List.of(), 0, Optional.empty(), List.of(), tally);
    }
    List<Change> changes = changes(plan, catalogue);
    try (Side side = new Side(aim.threads())) {
      Search search =
          new Search(inspection, asItIs, changes, faults, engine.book(), aim.limit(), side);
      List<Trial> found = search.run();
      List<Mend> mends =
          found.stream()
              .limit(aim.best())
              .map(t -> mend(search.of(t.members()), inspection, asItIs, faults))
              .toList();
      Optional<Mend> nearest =
          found.isEmpty()
              ? search.nearest().map(t -> mend(search.of(t.members()), inspection, asItIs, faults))
              : Optional.empty();
      return new Mending(
          plan,
          toClear,
          mends,
          found.size() - mends.size(),
          nearest,
          found.isEmpty() ? needs(inspection, asItIs, faults, nearest) : List.of(),
          new Mending.Tally(
              changes.size(),
              search.checks(),
              aim.limit(),
              search.allUpTo(),
              search.atLeast(),
              search.isCut()));
    }
  }

  /**
   * Whether a plan is what a mend promised: every rule says the same of it, word for word.
   *
   * @param read the mended plan as it was read back
   * @param about what the readers found in it and in the catalogue
   */
  public boolean isKept(Mend mend, Plan plan, Plan read, List<Problem> about) {
    Inspection.Seen promised = new Inspection(engine, plan, problems).with(mend.changes());
    Inspection.Seen now = new Inspection(engine, read, about).asItIs();
    return said(promised).equals(said(now));
  }

  private static List<String> said(Inspection.Seen seen) {
    return seen.findings().stream()
        .map(f -> f.outcome() + " " + f.rule() + " at " + f.at().name() + ": " + f.headline())
        .sorted()
        .toList();
  }

  private Mend mend(
      List<Change> made, Inspection inspection, Inspection.Seen asItIs, Faults faults) {
    Inspection.Seen now = inspection.with(made);
    return new Mend(
        made,
        faults.cleared(now),
        faults.left(now),
        faults.brought(now),
        Costs.difference(asItIs.plan(), now.plan()),
        made.stream().map(Change::givesUp).filter(g -> !g.isEmpty()).toList(),
        Effects.of(asItIs),
        Effects.of(now),
        now.plan());
  }

  /** Of what stands when the nearest set is made, or of the plan as it is. */
  private List<Need> needs(
      Inspection inspection, Inspection.Seen asItIs, Faults faults, Optional<Mend> nearest) {
    Inspection.Seen seen = nearest.map(n -> inspection.with(n.changes())).orElse(asItIs);
    return new Needs(seen, engine.book(), catalogue).of(faults.standing(seen, false).values());
  }
}
