package outshop.render.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outshop.units.Exact;

final class TicksTest {
  @Test
  void areTheRoundNumbersAPersonWouldTake() {
    assertThat(Ticks.linear(0, 10, 6)).containsExactly(0.0, 2.0, 4.0, 6.0, 8.0, 10.0);
    assertThat(Ticks.linear(6.3, 24.9, 8)).containsExactly(10.0, 15.0, 20.0);
    assertThat(Ticks.linear(-12, 4.5, 9))
        .containsExactly(-12.0, -10.0, -8.0, -6.0, -4.0, -2.0, 0.0, 2.0, 4.0);
    assertThat(Ticks.linear(0.1, 0.5, 5)).containsExactly(0.1, 0.2, 0.3, 0.4, 0.5);
    assertThat(Ticks.linear(1000, 1001, 3)).containsExactly(1000.0, 1000.5, 1001.0);
  }

  @Test
  void onALogarithmicAxisAreOneTwoFiveOrDecadesAlone() {
    assertThat(Ticks.logarithmic(0.3, 12)).containsExactly(0.5, 1.0, 2.0, 5.0, 10.0);
    assertThat(Ticks.logarithmic(0.01, 1000)).containsExactly(0.01, 0.1, 1.0, 10.0, 100.0, 1000.0);
  }

  @Test
  void lieWithinTheAxisEvenlyAndNotTooMany() {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double low = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(8) - 3);
      double high = low + random.nextDouble() * Math.pow(10, random.nextInt(8) - 3) + 1e-6;
      int most = 2 + random.nextInt(10);

      List<Double> ticks = Ticks.linear(low, high, most);

      assertThat(ticks).hasSizeLessThanOrEqualTo(most).isSorted();
      for (double tick : ticks) {
        assertThat(Exact.below(tick, low) || Exact.above(tick, high)).isFalse();
      }
      for (int k = 2; k < ticks.size(); k++) {
        double first = ticks.get(1) - ticks.get(0);
        double step = ticks.get(k) - ticks.get(k - 1);
        assertThat(step).isCloseTo(first, org.assertj.core.data.Percentage.withPercentage(0.01));
      }
    }
  }

  @Test
  void refuseAnAxisThatIsNone() {
    assertThatThrownBy(() -> Ticks.linear(3, 3, 5)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Ticks.linear(0, 3, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Ticks.logarithmic(0, 3)).isInstanceOf(IllegalArgumentException.class);
  }
}
