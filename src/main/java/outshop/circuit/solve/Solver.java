package outshop.circuit.solve;

import java.util.ArrayList;
import java.util.List;

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
    return solve(List.of(network)).get(0);
  }

  /**
   * Solves networks that differ in their values only (see {@link Network#with}); the tree grown for
   * the first serves for all. Errors as {@link #solve(Network)}.
   *
   * @return a solution a network, in their order
   */
  public static List<Solution> solve(List<Network> alike) throws NoSolution {
    List<Solution> solutions = new ArrayList<>(alike.size());
    Tree tree = null;
    for (Network network : alike) {
      ElementRanges.check(network.elements());
      Islands islands = network.layout().islands;
      Branches branches = new Branches(network.elements(), islands);
      Tree own = tree == null ? new Tree(network, islands, branches) : tree;
      tree = own;
      Newton newton = new Newton(network, branches, own);
      if (!newton.run()) {
        // Perhaps only for want of digits: a diode on the tree turned out not to conduct.
        own = new Tree(network, islands, branches);
        newton = new Newton(network, branches, own);
        if (!newton.run()) {
          throw newton.failure();
        }
      }
      solutions.add(result(network, branches, own, newton));
    }
    return solutions;
  }

  private static Solution result(Network network, Branches branches, Tree tree, Newton newton) {
    int elements = network.elements().size();
    double[] amps = new double[elements];
    double[] volts = new double[elements];
    double[] netVolts = new double[network.nets().size()];
    double[] branchVolts = newton.branchVolts();
    tree.netVolts(branchVolts, branches, netVolts);
    for (int k = 0; k < branches.count; k++) {
      if (!branches.isRegulatorOutput(k)) {
        amps[branches.element[k]] = branches.amps[k] + 0.0; // no -0.0
        volts[branches.element[k]] = branchVolts[k] + 0.0;
      }
    }
    return new Solution(network, netVolts, amps, volts, newton.rounds());
  }
}
