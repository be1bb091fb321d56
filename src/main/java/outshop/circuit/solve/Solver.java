package outshop.circuit.solve;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the direct-current solution of a network: nodal analysis, with the voltages of the nets
 * counted along a {@link Tree}, and Newton's method where a load is not linear.
 *
 * <p>Where constant-power loads leave a choice, the solution with the higher voltage is looked for
 * first, from the unloaded side, which is how a pack meets its loads. Only if that leads nowhere
 * are all sources raised from nothing. Nothing is random: the same network gives the same figures.
 */
public final class Solver {
  /** Currents at a net add up to zero within this share of their sizes. */
  public static final double BALANCED_WITHIN = 1e-10;

  /**
   * Beyond this voltage a current is taken to have nowhere to go: only a supply that nothing takes
   * up gets there.
   */
  public static final double MOST_VOLTS = 10_000;

  private Solver() {}

  /**
   * Solves {@code network}. Nets that no source or supply reaches are dead: 0 V, 0 A.
   *
   * @throws NoSolution if a supply's current has no way back or nothing takes it up, or the loads
   *     do not settle; names the elements
   * @throws IllegalArgumentException if an element is out of the range that {@link Element} states,
   *     names a net that is not there, or shares its name
   */
  public static Solution solve(Network network) throws NoSolution {
    ElementRanges.check(network);
    Islands islands = new Islands(network);
    Branches branches = new Branches(network.elements(), islands);
    Tree tree = new Tree(network, islands, branches);
    Newton newton = new Newton(network, branches, tree);
    if (!newton.run()) {
      // Perhaps only for want of digits: a diode on the tree turned out not to conduct.
      tree = new Tree(network, islands, branches);
      newton = new Newton(network, branches, tree);
      if (!newton.run()) {
        throw newton.failure();
      }
    }
    return result(network, branches, tree, newton);
  }

  private static Solution result(Network network, Branches branches, Tree tree, Newton newton) {
    List<Element> elements = network.elements();
    double[] amps = new double[elements.size()];
    double[] volts = new double[elements.size()];
    double[] netVolts = new double[network.nets().size()];
    double[] branchVolts = newton.branchVolts();
    tree.netVolts(branchVolts, branches, netVolts);
    for (int k = 0; k < branches.count; k++) {
      if (!branches.isRegulatorOutput(k)) {
        amps[branches.element[k]] = branches.amps[k];
        volts[branches.element[k]] = branchVolts[k];
      }
    }
    Map<String, Double> ampsByName = new LinkedHashMap<>(2 * elements.size());
    Map<String, Double> voltsByName = new LinkedHashMap<>(2 * elements.size());
    for (int index = 0; index < elements.size(); index++) {
      String name = elements.get(index).name();
      ampsByName.put(name, amps[index] + 0.0); // no -0.0
      voltsByName.put(name, volts[index] + 0.0);
    }
    return new Solution(
        netVolts,
        Collections.unmodifiableMap(ampsByName),
        Collections.unmodifiableMap(voltsByName),
        newton.rounds());
  }
}
