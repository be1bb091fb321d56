package outshop.circuit.solve;

/** Solves a small dense set of linear equations by elimination with partial pivoting. */
final class Lu {
  /** A pivot this much smaller than the largest entry of its row at the start counts as none. */
  private static final double NOTHING_LEFT = 1e-14;

  private final int size;
  private final double[] perRow;

  Lu(int size) {
    this.size = size;
    this.perRow = new double[size];
  }

  /**
   * Turns {@code right} into the solution of {@code matrix x = right}. Uses both arrays up.
   *
   * @param matrix row by row, size x size
   * @return false if the equations do not determine a solution
   */
  boolean solve(double[] matrix, double[] right) {
    for (int row = 0; row < size; row++) {
      double largest = 0;
      for (int at = row * size; at < (row + 1) * size; at++) {
        largest = Math.max(largest, Math.abs(matrix[at]));
      }
      if (!(largest > 0 && largest < Double.POSITIVE_INFINITY)) {
        return false;
      }
      perRow[row] = 1 / largest;
    }
    for (int column = 0; column < size; column++) {
      int pivot = pivotRow(matrix, column);
      if (!(Math.abs(matrix[pivot * size + column]) * perRow[pivot] > NOTHING_LEFT)) {
        return false;
      }
      if (pivot != column) {
        swap(matrix, right, pivot, column);
      }
      eliminateBelow(matrix, right, column);
    }
    substituteBack(matrix, right);
    return true;
  }

  /**
   * Compares entries relative to their rows: a row of a leaking diode is as good as one of a wire.
   */
  private int pivotRow(double[] matrix, int column) {
    int best = column;
    double bestShare = -1;
    for (int row = column; row < size; row++) {
      double share = Math.abs(matrix[row * size + column]) * perRow[row];
      if (share > bestShare) {
        bestShare = share;
        best = row;
      }
    }
    return best;
  }

  private void swap(double[] matrix, double[] right, int one, int other) {
    for (int column = 0; column < size; column++) {
      double kept = matrix[one * size + column];
      matrix[one * size + column] = matrix[other * size + column];
      matrix[other * size + column] = kept;
    }
    double kept = right[one];
    right[one] = right[other];
    right[other] = kept;
    kept = perRow[one];
    perRow[one] = perRow[other];
    perRow[other] = kept;
  }

  private void eliminateBelow(double[] matrix, double[] right, int column) {
    int pivotRow = column * size;
    double perPivot = 1 / matrix[pivotRow + column];
    for (int row = column + 1; row < size; row++) {
      int at = row * size;
      double factor = matrix[at + column] * perPivot;
      if (factor != 0) {
        for (int other = column + 1; other < size; other++) {
          matrix[at + other] -= factor * matrix[pivotRow + other];
        }
        right[row] -= factor * right[column];
      }
    }
  }

  private void substituteBack(double[] matrix, double[] right) {
    for (int row = size - 1; row >= 0; row--) {
      double sum = right[row];
      for (int column = row + 1; column < size; column++) {
        sum -= matrix[row * size + column] * right[column];
      }
      right[row] = sum / matrix[row * size + row];
    }
  }
}
