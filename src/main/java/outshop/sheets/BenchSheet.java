package outshop.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The bench sheet: how to prove a locomotive step by step, in an order in which each step is
 * guarded by those before it.
 *
 * @param standing the violations that stand; while there is one nothing may be powered
 * @param cautions what to mind before the first step
 * @param assumptions what the windows rest on
 * @param stages in their order
 */
public record BenchSheet(
    String title,
    String planFile,
    List<Standing> standing,
    List<Line> cautions,
    List<Line> assumptions,
    List<Stage> stages) {

  public BenchSheet {
    standing = List.copyOf(standing);
    cautions = List.copyOf(cautions);
    assumptions = List.copyOf(assumptions);
    stages = List.copyOf(stages);
  }

  /** A violation of the report that stands. */
  public record Standing(String rule, String where, String headline) {}

  /** What feeds the locomotive during a stage. Later stages feed it with more. */
  public enum Power {
    NOTHING("nothing powered"),
    SUPPLY("bench supply in place of the pack"),
    PACK("the pack"),
    CHARGER("the charger");

    private final String words;

    Power(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * Steps under one sort of power.
   *
   * @param before what must be so before its first step
   * @param barred whether a violation forbids it
   */
  public record Stage(
      Power power, String title, List<Line> before, List<Step> steps, boolean barred) {
    public Stage {
      before = List.copyOf(before);
      steps = List.copyOf(steps);
    }
  }

  /**
   * One step.
   *
   * @param name short and the same on every sheet of the plan, by which its reading comes back
   * @param act what to do
   * @param leads where the meter's leads go
   * @param ifOff what it means where the reading is off
   */
  public record Step(String name, Line act, Line leads, Expected expected, List<Off> ifOff) {
    public Step {
      ifOff = List.copyOf(ifOff);
    }

    /** What a reading off on one side means, if something is said of that side. */
    public Optional<Line> means(Side side) {
      return ifOff.stream().filter(o -> o.side() == side).map(Off::means).findFirst();
    }
  }

  /** On which side of what is expected a reading lies. */
  public enum Side {
    LOW("low"),
    HIGH("high"),
    NONE("none");

    private final String word;

    Side(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** What a reading on one side means. */
  public record Off(Side side, Line means) {}

  /** Every step, in order. */
  public List<Step> steps() {
    List<Step> all = new ArrayList<>();
    stages.forEach(stage -> all.addAll(stage.steps()));
    return all;
  }
}
