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
  /** Currents this much below the largest of the network need not balance to their own size. */
  static final double SMALL_SHARE = 1e-3;

  /** As good as rounding allows: no further round. */
  private static final double EXACT = 1e-13;

  private static final int MOST_STEPS = 60;
  private static final int MOST_SETTLING_STEPS = 600;
  private static final int MOST_HALVINGS = 50;

  private final Network network;
  private final Branches branches;
  private final Tree tree;
  private final int n;
  private final Lu lu;

  private final double[] constant;
  private final double[] fixed;
  private final double[] matrix;
  private final double[] residual;
  private final double[] step;
  private final double[] sizes;
  private double[] unknowns;
  private double[] trial;
  private final double[] above;

  /** The largest imbalance, as a share of the currents it is an imbalance of. */
  private double imbalance;

  private int worst;
  private int rounds;

  Newton(Network network, Branches branches, Tree tree) {
    this.network = network;
    this.branches = branches;
    this.tree = tree;
    n = tree.size;
    lu = new Lu(n);
    fixed = new double[n * n];
    matrix = new double[n * n];
    residual = new double[n];
    step = new double[n];
    sizes = new double[n];
    unknowns = new double[n];
    trial = new double[n];
    above = new double[branches.count];
    constant = new double[branches.count];
    layConstants();
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

  /** Leaves the branches with the currents of the solution. */
  void run() throws NoSolution {
    boolean opened = open();
    measure(unknowns);
    if (!(opened && descend())) {
      settle();
    }
    requireBound();
    if (!(imbalance <= Solver.BALANCED_WITHIN)) {
      throw new NoSolution("the loads do not settle", across(worst));
    }
  }

  private void layConstants() {
    for (int k = 0; k < branches.count; k++) {
      double volts = 0;
      for (int at = tree.wayStart[k]; at < tree.wayStart[k + 1]; at++) {
        volts += tree.sign[at] * branches.offset[tree.branch[tree.place[at]]];
      }
      constant[k] = volts - branches.offset[k];
    }
    branches.guess();
    for (int k = 0; k < branches.count; k++) {
      if (branches.isLinear(k)) {
        stamp(fixed, k, k, branches.slope[k]);
      }
    }
  }

  /** One step from the straight-line guess. */
  private boolean open() {
    branches.guess();
    // The lines of the guess run through no voltage above the offset; move to none on the tree.
    for (int k = 0; k < branches.count; k++) {
      branches.amps[k] += branches.slope[k] * constant[k];
      if (branches.cross[k] != 0) {
        branches.amps[k] += branches.cross[k] * constant[branches.partner[k]];
      }
    }
    balance();
    boolean solved = direct(1, 0);
    if (solved) {
      System.arraycopy(step, 0, unknowns, 0, n);
    }
    return solved;
  }

  /** Newton's method with a bound on how far one step may go. True once balanced. */
  private boolean descend() {
    double before = Double.POSITIVE_INFINITY;
    for (int count = 0; count < MOST_STEPS; count++) {
      if (done(before)) {
        return true;
      }
      before = imbalance;
      if (!direct(1, 0)) {
        return false;
      }
      if (!(slopeAlongStep() < 0) && !direct(0, 0)) {
        return false;
      }
      walk();
      if (beyondBound()) {
        return false;
      }
    }
    return imbalance <= Solver.BALANCED_WITHIN;
  }

  /**
   * For networks on which the steps go in circles or lead nowhere: lets the voltages creep as if
   * every tree branch had a capacitor, in ever longer strides. Ends where a real network would.
   */
  private void settle() {
    Arrays.fill(unknowns, 0);
    measure(unknowns);
    double siemens = 1;
    double before = Double.POSITIVE_INFINITY;
    for (int count = 0; count < MOST_SETTLING_STEPS && !done(before); count++) {
      before = imbalance;
      if (!direct(1, siemens) || largest(step) > reach()) {
        siemens *= 4;
        before = Double.POSITIVE_INFINITY;
        continue;
      }
      advance(1);
      accept();
      siemens *= imbalance > before ? 4 : 0.5;
      if (beyondBound()) {
        return;
      }
    }
  }

  /** Balanced, and no longer getting better by much. */
  private boolean done(double before) {
    return imbalance <= EXACT || (imbalance <= Solver.BALANCED_WITHIN && imbalance > before * 0.25);
  }

  /**
   * Solves for the step that would balance the currents.
   *
   * @param falling 1 to count in slopes that fall, 0 to take them as level
   * @param siemens of a capacitor along each tree branch
   */
  private boolean direct(double falling, double siemens) {
    rounds++;
    System.arraycopy(fixed, 0, matrix, 0, matrix.length);
    for (int k = 0; k < branches.count; k++) {
      if (!branches.isLinear(k)) {
        double slope = branches.slope[k];
        stamp(matrix, k, k, slope < 0 ? slope * falling : slope);
        stamp(matrix, k, branches.partner[k], branches.cross[k]);
      }
    }
    for (int i = 0; i < n; i++) {
      matrix[i * n + i] += siemens;
      step[i] = -residual[i];
    }
    return lu.solve(matrix, step) && largest(step) < Double.POSITIVE_INFINITY;
  }

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
    double reach = reach();
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

  /** Currents and their imbalance at these unknowns. */
  private void measure(double[] at) {
    for (int k = 0; k < branches.count; k++) {
      double volts = constant[k];
      for (int i = tree.wayStart[k]; i < tree.wayStart[k + 1]; i++) {
        volts += tree.sign[i] * at[tree.place[i]];
      }
      above[k] = volts;
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
      double size = Math.abs(current);
      most = Math.max(most, size);
      for (int i = tree.wayStart[k]; i < tree.wayStart[k + 1]; i++) {
        residual[tree.place[i]] += tree.sign[i] * current;
        sizes[tree.place[i]] += size;
      }
    }
    imbalance = 0;
    for (int i = 0; i < n; i++) {
      double off = Math.abs(residual[i]);
      if (off > 0 || Double.isNaN(off)) {
        double share = off / (sizes[i] + SMALL_SHARE * most);
        if (!(share <= imbalance)) {
          imbalance = share;
          worst = i;
        }
      }
    }
  }

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

  /** How far one step may move a voltage. */
  private double reach() {
    return 4 * Math.max(10, Math.max(branches.highestEmf, largest(unknowns)));
  }

  private boolean beyondBound() {
    return !(largest(above) <= Solver.MOST_VOLTS);
  }

  private void requireBound() throws NoSolution {
    if (!beyondBound()) {
      return;
    }
    List<String> names = new ArrayList<>();
    for (int k = 0; k < branches.count; k++) {
      if (!(Math.abs(above[k]) <= Solver.MOST_VOLTS)) {
        names.add(name(k));
      }
    }
    throw new NoSolution("nothing takes up the current, the voltage has no bound", names);
  }

  /** The elements that join the two parts divided at a tree branch, those with a bend first. */
  private List<String> across(int place) {
    Set<String> bent = new LinkedHashSet<>();
    Set<String> straight = new LinkedHashSet<>();
    for (int k = 0; k < branches.count; k++) {
      for (int i = tree.wayStart[k]; i < tree.wayStart[k + 1]; i++) {
        if (tree.place[i] == place) {
          (branches.isLinear(k) ? straight : bent).add(name(k));
        }
      }
    }
    return List.copyOf(bent.isEmpty() ? straight : bent);
  }

  private String name(int branch) {
    return network.elements().get(branches.element[branch]).name();
  }
}
