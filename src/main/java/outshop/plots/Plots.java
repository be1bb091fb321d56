package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Part;
import outshop.figures.Bench;

/** The data of every plot of a plan, in the order they are shown. */
public final class Plots {
  private Plots() {}

  /**
   * The plots: voltage windows, current ladder, one of gates for each fuse, run time, loudness.
   *
   * @param facts the figures of the same bench
   * @param speakers the catalogue's speakers, to be compared with what is fitted; none where only
   *     the plan is at hand
   */
  public static List<Plot> of(Bench bench, List<Object> facts, List<Part> speakers) {
    List<Plot> plots = new ArrayList<>();
    plots.add(VoltageWindows.of(bench, facts));
    plots.add(CurrentLadder.of(bench, facts));
    plots.addAll(FuseCurves.of(bench, facts));
    plots.add(RunTimes.of(bench, facts));
    plots.add(Loudness.of(bench, speakers));
    return List.copyOf(plots);
  }

  /** The facts of one kind, in their order. */
  static <T> List<T> all(List<Object> facts, Class<T> kind) {
    return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
