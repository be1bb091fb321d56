package outshop.circuit.solve;

import java.util.Arrays;

/**
 * Solves the equations of one step by way of the few loops that count. A tree branch stands in one
 * equation of its own; what couples them are the branches off the tree whose current changes with
 * their volts, and of those there are few: a load that draws the same at any voltage is none. So a
 * small set of equations, one a coupling branch, does instead of one a tree branch (Sherman,
 * Morrison and Woodbury; Golub and Van Loan, Matrix Computations, section 2.1; from memory).
 */
final class FewLoops {
  private final Branches branches;
  private final Tree tree;

  /** The coupling branches, and by branch its place among them. */
  private final int[] coupling;

  private final int[] numberOf;
  private final double[] perSlope;
  private final double[] along;
  private int count;

  FewLoops(Branches branches, Tree tree) {
    this.branches = branches;
    this.tree = tree;
    coupling = new int[branches.count];
    numberOf = new int[branches.count];
    perSlope = new double[tree.size];
    along = new double[tree.size];
  }

  /**
   * Turns {@code step} from the right side into the solution.
   *
   * @param falling 1 to count in slopes that fall, 0 to take them as level
   * @return false, with {@code step} as it was, if it is not a case for this way
   */
  boolean solve(double falling, double[] step) {
    if (!invertTree() || !findCoupling(falling)) {
      return false;
    }
    double[] matrix = new double[count * count];
    double[] right = new double[count];
    for (int c = 0; c < count; c++) {
      couple(c, falling, matrix, right, step);
    }
    if (count > 0 && !new Lu(count).solve(matrix, right)) {
      return false;
    }
    for (int c = 0; c < count; c++) {
      int k = coupling[c];
      for (int at = tree.wayStart[k]; at < tree.wayStart[k + 1]; at++) {
        step[tree.place[at]] -= tree.sign[at] * right[c];
      }
    }
    for (int i = 0; i < tree.size; i++) {
      step[i] *= perSlope[i];
    }
    return true;
  }

  private boolean invertTree() {
    for (int i = 0; i < tree.size; i++) {
      double slope = branches.slope[tree.branch[i]];
      if (!(slope > 0)) {
        return false;
      }
      perSlope[i] = 1 / slope;
    }
    return true;
  }

  private boolean findCoupling(double falling) {
    Arrays.fill(numberOf, Branches.NONE);
    count = 0;
    for (int k = 0; k < branches.count; k++) {
      if (slope(k, falling) != 0) {
        enter(k);
      }
      if (branches.cross[k] != 0) {
        enter(k);
        enter(branches.partner[k]);
      }
    }
    return 2 * count <= tree.size;
  }

  private void enter(int branch) {
    if (numberOf[branch] == Branches.NONE) {
      numberOf[branch] = count;
      coupling[count++] = branch;
    }
  }

  /** The slope that is not in the tree's own part of the equations. */
  private double slope(int branch, double falling) {
    if (tree.holds(branch)) {
      return 0;
    }
    double slope = branches.slope[branch];
    return slope < 0 ? slope * falling : slope;
  }

  /**
   * Lays the equation of one coupling branch: its current, by its own volts and its partner's, if
   * the tree carried the right side and the currents of all coupling branches.
   */
  private void couple(int c, double falling, double[] matrix, double[] right, double[] rightSide) {
    int k = coupling[c];
    matrix[c * count + c] = 1;
    addVolts(k, slope(k, falling), c, matrix, right, rightSide);
    if (branches.cross[k] != 0) {
      addVolts(branches.partner[k], branches.cross[k], c, matrix, right, rightSide);
    }
  }

  private void addVolts(
      int branch, double siemens, int row, double[] matrix, double[] right, double[] rightSide) {
    if (siemens == 0) {
      return;
    }
    double volts = 0;
    for (int at = tree.wayStart[branch]; at < tree.wayStart[branch + 1]; at++) {
      int place = tree.place[at];
      along[place] = tree.sign[at] * perSlope[place];
      volts += along[place] * rightSide[place];
    }
    right[row] += siemens * volts;
    for (int c = 0; c < count; c++) {
      int other = coupling[c];
      double shared = 0;
      for (int at = tree.wayStart[other]; at < tree.wayStart[other + 1]; at++) {
        shared += tree.sign[at] * along[tree.place[at]];
      }
      matrix[row * count + c] += siemens * shared;
    }
    for (int at = tree.wayStart[branch]; at < tree.wayStart[branch + 1]; at++) {
      along[tree.place[at]] = 0;
    }
  }
}
