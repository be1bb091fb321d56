package outshop.acceptance;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import outshop.circuit.LoadCase;
import outshop.circuit.solve.Network;
import outshop.figures.Bench;

/**
 * A demo plan's circuit in one case.
 *
 * @param plan the plan's name
 * @param name of its stored results
 */
public record PlanNetwork(String plan, String name, Network network) {
  private static final List<LoadCase> CASES =
      List.of(
          new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING),
          new LoadCase(LoadCase.Charge.NOMINAL, LoadCase.Drive.CRUISING),
          new LoadCase(LoadCase.Charge.EMPTY, LoadCase.Drive.SLIPPING),
          new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.BLOCKED));

  /** Four load cases and charging of each demo plan, as far as they can be solved. */
  public static List<PlanNetwork> all() {
    List<PlanNetwork> all = new ArrayList<>();
    for (Path path : Sample.plans()) {
      String plan = path.getFileName().toString().replace(".yaml", "");
      Bench bench = Bench.of(Sample.plan(path), List.of());
      for (LoadCase loadCase : CASES) {
        String words = loadCase.words().toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
        bench.cases().network(loadCase).ifPresent(n -> all.add(of(plan, words, n)));
      }
      Optional<Network> charging = bench.cases().chargingNetwork();
      charging.ifPresent(n -> all.add(of(plan, "charging", n)));
    }
    return all;
  }

  private static PlanNetwork of(String plan, String loadCase, Network network) {
    return new PlanNetwork(plan, "plan-" + plan + "--" + loadCase, network);
  }
}
