package outshop.circuit.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The iteration. Its unknowns are the volts of the tree branches above their offsets; its equations
 * are Kirchhoff's current law for the two parts into which each tree branch divides its island.
 */
final class Newton {
  /** As good as rounding allows: no further step. */
  private static final double EXACT = 1e-13;

  /** Volts are rounded by this share of the largest volts in the sum that makes them up. */
  private static final double ROUNDING = 1e-15;

  /** A current this much below the largest one need not balance to its own size, but to this. */
  private static final double SMALL_SHARE = 1e-3;

  private static final double SMALL_AMPS = 1e-9;

  private static final int MOST_STEPS = 40;
  private static final int MOST_HALVINGS = 50;
  private static final double SMALLEST_RAISE = 1e-5;

  private final Network network;
  private final Branches branches;
  private final Tree tree;
  private final int n;
  private final FewLoops fewLoops;

  /** Volts of each branch above its offset when those of the tree are at theirs. */
  private final double[] constant;

  private final double[] residual;
  private final double[] sizes;
  private final double[] step;
  private double[] unknowns;
  private double[] trial;
  private final double[] above;
  private final double[] roundedVolts;

  /** The largest imbalance, as a share of the currents it is an imbalance of. */
  private double imbalance;

  private int worst;
  private int rounds;
  private List<String> unbounded = List.of();

  Newton(Network network, Branches branches, Tree tree) {
    this.network = network;
    this.branches = branches;
    this.tree = tree;
    n = tree.size;
    fewLoops = new FewLoops(branches, tree);
    residual = new double[n];
    sizes = new double[n];
    step = new double[n];
    unknowns = new double[n];
    trial = new double[n];
    constant = new double[branches.count];
    above = new double[branches.count];
    roundedVolts = new double[branches.count];
  }

  /** How many sets of linear equations it took. */
  int rounds() {
    return rounds;
  }

  /** The volts of every branch, offset included. */
  double[] branchVolts() {
    double[] volts = new double[branches.count];
    for (int k = 0; k < volts.length; k++) {
      volts[k] = above[k] + branches.offset[k];
    }
    return volts;
  }

  /**
   * Leaves the branches with the currents of the solution.
   *
   * @return false if there is none good enough
   */
  boolean run() {
    if (!(open() && descend())) {
      raise();
    }
    return imbalance <= Solver.BALANCED_WITHIN && balancesAtNets() && !beyondBound();
  }

  /** What to throw after a run that ended without a solution. */
  NoSolution failure() {
    if (!unbounded.isEmpty()) {
      return new NoSolution("nothing takes up the current, the voltage has no bound", unbounded);
    }
    return new NoSolution("the currents of these do not come to a balance", across(worst));
  }

  /** Lays out what does not change, and goes one step from the straight-line guess. */
  private boolean open() {
    branches.guess();
    for (int k = 0; k < branches.count; k++) {
      double volts = 0;
      for (int at = tree.wayStart[k]; at < tree.wayStart[k + 1]; at++) {
        volts += tree.sign[at] * branches.offset[tree.branch[tree.place[at]]];
      }
      constant[k] = volts - branches.offset[k];
    }
    for (int k = 0; k < branches.count; k++) {
      branches.amps[k] += branches.slope[k] * constant[k];
      if (branches.cross[k] != 0) {
        branches.amps[k] += branches.cross[k] * constant[branches.partner[k]];
      }
    }
    balance();
    boolean solved = direct(1);
    if (solved) {
      System.arraycopy(step, 0, unknowns, 0, n);
    }
    measure(unknowns);
    return solved;
  }

  /** Newton's method with a bound on how far a step may go. True once balanced. */
  private boolean descend() {
    double before = Double.POSITIVE_INFINITY;
    for (int count = 0; count < MOST_STEPS; count++) {
      if (done(before)) {
        return true;
      }
      before = imbalance;
      if (!direct(1) || (!(slopeAlongStep() < 0) && !direct(0))) {
        return false;
      }
      walk();
      if (beyondBound()) {
        return false;
      }
    }
    return false;
  }

  /** Newton's method as it is: reaches what lies beyond a rise, or runs away. */
  private boolean leap() {
    double before = Double.POSITIVE_INFINITY;
    for (int count = 0; count < MOST_STEPS; count++) {
      if (done(before)) {
        return true;
      }
      before = imbalance;
      if (!direct(1)) {
        return false;
      }
      advance(1);
      accept();
    }
    return false;
  }

  /**
   * For networks that do not settle from the loaded side, such as a regulator that its pack cannot
   * feed: starts from dead and raises all sources and supplies together, as far at a time as the
   * loads follow.
   */
  private void raise() {
    for (int i = 0; i < n; i++) {
      unknowns[i] = -branches.offset[tree.branch[i]];
    }
    double[] reached = unknowns.clone();
    double drive = 0;
    double further = 1;
    while (drive < 1 && further > SMALLEST_RAISE) {
      branches.drive = Math.min(1, drive + further);
      measure(unknowns);
      if (leap() || retry(reached)) {
        System.arraycopy(unknowns, 0, reached, 0, n);
        drive = branches.drive;
        further *= 2;
      } else {
        System.arraycopy(reached, 0, unknowns, 0, n);
        further *= 0.5;
      }
    }
    branches.drive = 1;
    measure(unknowns);
  }

  private boolean retry(double[] from) {
    System.arraycopy(from, 0, unknowns, 0, n);
    measure(unknowns);
    return descend();
  }

  /** Balanced, and no longer getting better by much. */
  private boolean done(double before) {
    return imbalance <= EXACT || (imbalance <= Solver.BALANCED_WITHIN && imbalance > before * 0.25);
  }

  /**
   * Solves for the step that would balance the currents.
   *
   * @param falling 1 to count in slopes that fall, 0 to take them as level
   */
  private boolean direct(double falling) {
    rounds++;
    for (int i = 0; i < n; i++) {
      step[i] = -residual[i];
    }
    return (fewLoops.solve(falling, step) || dense(falling))
        && largest(step) < Double.POSITIVE_INFINITY;
  }

  /** The whole set of equations, one a tree branch. */
  private boolean dense(double falling) {
    double[] matrix = new double[n * n];
    for (int k = 0; k < branches.count; k++) {
      double slope = branches.slope[k];
      stamp(matrix, k, k, slope < 0 ? slope * falling : slope);
      if (branches.cross[k] != 0) {
        stamp(matrix, k, branches.partner[k], branches.cross[k]);
      }
    }
    return new Lu(n).solve(matrix, step);
  }

  /** Counts in that the current of {@code row} changes with the volts of {@code column}. */
  private void stamp(double[] into, int row, int column, double siemens) {
    if (siemens == 0) {
      return;
    }
    for (int i = tree.wayStart[row]; i < tree.wayStart[row + 1]; i++) {
      int at = tree.place[i] * n;
      double signed = tree.sign[i] * siemens;
      for (int j = tree.wayStart[column]; j < tree.wayStart[column + 1]; j++) {
        into[at + tree.place[j]] += signed * tree.sign[j];
      }
    }
  }

  /**
   * Goes along the step, but not beyond where the imbalance turns against it: there it looks for a
   * place in between. Without regulators that is walking down to the bottom of a valley (the sum of
   * current times change of voltage over all branches), so it does not go in circles.
   */
  private void walk() {
    double longest = largest(step);
    double reach = 4 * Math.max(10, Math.max(branches.highestEmf, largest(unknowns)));
    if (longest > reach) {
      for (int i = 0; i < n; i++) {
        step[i] *= reach / longest;
      }
    }
    double enough = 0.5 * Math.abs(slopeAlongStep());
    double low = 0;
    double high = 1;
    double share = 1;
    for (int count = 0; count < MOST_HALVINGS; count++) {
      advance(share);
      double slope = slopeAlongStep();
      if (Math.abs(slope) <= enough || (share == 1 && slope <= 0)) {
        break;
      }
      if (slope > 0) {
        high = share;
      } else {
        low = share;
      }
      share = 0.5 * (low + high);
    }
    accept();
  }

  private double slopeAlongStep() {
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += residual[i] * step[i];
    }
    return sum;
  }

  private void advance(double share) {
    for (int i = 0; i < n; i++) {
      trial[i] = unknowns[i] + share * step[i];
    }
    measure(trial);
  }

  private void accept() {
    double[] old = unknowns;
    unknowns = trial;
    trial = old;
  }

  /** Works out all currents and their imbalance at these unknowns. */
  private void measure(double[] at) {
    for (int k = 0; k < branches.count; k++) {
      double volts = constant[k];
      double summed = Math.abs(branches.offset[k]) + Math.abs(volts);
      for (int i = tree.wayStart[k]; i < tree.wayStart[k + 1]; i++) {
        double along = at[tree.place[i]];
        volts += tree.sign[i] * along;
        summed += Math.abs(along);
      }
      above[k] = volts;
      roundedVolts[k] = ROUNDING * summed;
    }
    branches.evaluate(above);
    balance();
  }

  private void balance() {
    Arrays.fill(residual, 0);
    Arrays.fill(sizes, 0);
    double most = 0;
    for (int k = 0; k < branches.count; k++) {
      double current = branches.amps[k];
      double size = size(k);
      most = Math.max(most, Math.abs(current));
      for (int i = tree.wayStart[k]; i < tree.wayStart[k + 1]; i++) {
        residual[tree.place[i]] += tree.sign[i] * current;
        sizes[tree.place[i]] += size;
      }
    }
    double small = smallCurrent(most);
    imbalance = 0;
    for (int i = 0; i < n; i++) {
      double share = Math.abs(residual[i]) / (sizes[i] + small);
      if (!(share <= imbalance)) {
        imbalance = Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
        worst = i;
      }
    }
  }

  /**
   * Kirchhoff's current law at every net by itself, straight from the currents of its branches: it
   * shares nothing with the equations that were solved but the currents they ended in.
   */
  private boolean balancesAtNets() {
    int nets = network.nets().size();
    double[] sum = new double[nets];
    double[] around = new double[nets];
    double most = 0;
    for (int k = 0; k < branches.count; k++) {
      double current = branches.amps[k];
      double size = size(k);
      most = Math.max(most, Math.abs(current));
      sum[branches.from[k]] += current;
      sum[branches.to[k]] -= current;
      around[branches.from[k]] += size;
      around[branches.to[k]] += size;
    }
    double small = smallCurrent(most);
    boolean balanced = true;
    for (int net = 0; net < nets; net++) {
      balanced &= Math.abs(sum[net]) <= Solver.BALANCED_WITHIN * (around[net] + small);
    }
    return balanced;
  }

  /**
   * The current that the balance is a share of: its own, and room for the rounding of its volts.
   */
  private double size(int k) {
    double rounding = Math.abs(branches.slope[k]) * roundedVolts[k];
    int partner = branches.partner[k];
    if (partner != Branches.NONE) {
      rounding += Math.abs(branches.cross[k]) * roundedVolts[partner];
    }
    return Math.abs(branches.amps[k]) + rounding / Solver.BALANCED_WITHIN;
  }

  private static double smallCurrent(double mostAmps) {
    return SMALL_SHARE * mostAmps + SMALL_AMPS;
  }

  /** Endless if one of the values is no number. */
  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      double size = Math.abs(value);
      if (!(size <= largest)) {
        largest = Double.isNaN(size) ? Double.POSITIVE_INFINITY : size;
      }
    }
    return largest;
  }

  private boolean beyondBound() {
    if (largest(above) <= Solver.MOST_VOLTS) {
      return false;
    }
    Set<String> names = new LinkedHashSet<>();
    for (int k = 0; k < branches.count; k++) {
      if (!(Math.abs(above[k]) <= Solver.MOST_VOLTS)) {
        names.add(name(k));
      }
    }
    unbounded = List.copyOf(names);
    return true;
  }

  /** The elements that join the two parts divided at a tree branch; those with a bend, if any. */
  private List<String> across(int place) {
    List<String> bent = new ArrayList<>();
    List<String> straight = new ArrayList<>();
    for (int k = 0; k < branches.count; k++) {
      for (int i = tree.wayStart[k]; i < tree.wayStart[k + 1]; i++) {
        if (tree.place[i] == place) {
          (branches.isLinear(k) ? straight : bent).add(name(k));
        }
      }
    }
    return (bent.isEmpty() ? straight : bent).stream().distinct().toList();
  }

  private String name(int branch) {
    return network.elements().get(branches.element[branch]).name();
  }
}
