package outshop.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ExactTest {

  @ParameterizedTest
  @CsvSource({
    // a, b, above, below, same
    "1, 0, true, false, false",
    "0, 1, false, true, false",
    "0, 0, false, false, true",
    "0, -0.0, false, false, true",
    "-2, -1, false, true, false",
    "16.8, 16.8, false, false, true",
    "1.0000000009, 1, false, false, true",
    "1.0000000011, 1, true, false, false",
    "1, 1.0000000011, false, true, false",
    "1e-300, 0, true, false, false",
    "1e300, 1e299, true, false, false",
    "Infinity, 5, true, false, false",
    "-Infinity, 5, false, true, false",
    "Infinity, Infinity, false, false, true",
    "NaN, 5, false, false, false",
    "5, NaN, false, false, false",
    "NaN, NaN, false, false, false",
  })
  void compares(double a, double b, boolean above, boolean below, boolean same) {
    assertThat(Exact.above(a, b)).as("above").isEqualTo(above);
    assertThat(Exact.below(a, b)).as("below").isEqualTo(below);
    assertThat(Exact.same(a, b)).as("same").isEqualTo(same);
  }

  @Test
  void aProductAtItsLimitPasses() {
    assertThat(12 * 1.2).isNotEqualTo(14.4);
    assertThat(Exact.above(14.4, 12 * 1.2)).isFalse();
    assertThat(Exact.below(14.4, 12 * 1.2)).isFalse();
    assertThat(Exact.same(14.4, 12 * 1.2)).isTrue();
    assertThat(Exact.same(0.1 + 0.2, 0.3)).isTrue();
  }

  @Test
  void exactlyOneOfAboveBelowAndSameHolds() {
    for (long seed = 1; seed <= 2000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      double a = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 6);
      double b = random.nextBoolean() ? a * (1 + (random.nextDouble() - 0.5) * 4e-9) : -a;
      int hold =
          (Exact.above(a, b) ? 1 : 0) + (Exact.below(a, b) ? 1 : 0) + (Exact.same(a, b) ? 1 : 0);

      assertThat(hold).as("seed %d: %s and %s", seed, a, b).isOne();
      assertThat(Exact.above(a, b)).as("seed %d", seed).isEqualTo(Exact.below(b, a));
      assertThat(Exact.same(a, b)).as("seed %d", seed).isEqualTo(Exact.same(b, a));
    }
  }
}
