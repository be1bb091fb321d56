package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

final class LuTest {
  @Test
  void findsWhatMultipliesBack() {
    for (long seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      int size = 1 + random.nextInt(25);
      double[] matrix = random.doubles((long) size * size, -1, 1).toArray();
      double[] wanted = random.doubles(size, -1, 1).toArray();
      double[] right = new double[size];
      for (int row = 0; row < size; row++) {
        for (int column = 0; column < size; column++) {
          right[row] += matrix[row * size + column] * wanted[column];
        }
      }
      assertThat(new Lu(size).solve(matrix, right)).as("seed %d", seed).isTrue();
      assertThat(right).as("seed %d", seed).containsExactly(wanted, within(1e-9));
    }
  }

  @Test
  void swapsRowsWhereTheDiagonalIsEmpty() {
    double[] right = {2, 3};
    assertThat(new Lu(2).solve(new double[] {0, 1, 1, 0}, right)).isTrue();
    assertThat(right).containsExactly(3, 2);
  }

  /** Rows of a leaking diode beside those of a thick wire. */
  @Test
  void judgesARowByItsOwnSize() {
    double[] right = {1e6, 3e-9};
    assertThat(new Lu(2).solve(new double[] {1e6, 0, 1e-9, 1e-9}, right)).isTrue();
    assertThat(right).containsExactly(new double[] {1, 2}, within(1e-15));
  }

  @Test
  void saysWhenThereIsNoSolution() {
    assertThat(new Lu(2).solve(new double[] {1, 2, 2, 4}, new double[] {1, 1})).isFalse();
    assertThat(new Lu(2).solve(new double[] {0, 0, 1, 1}, new double[] {1, 1})).isFalse();
    assertThat(new Lu(1).solve(new double[] {Double.NaN}, new double[] {1})).isFalse();
    assertThat(new Lu(1).solve(new double[] {Double.POSITIVE_INFINITY}, new double[] {1}))
        .isFalse();
  }
}
