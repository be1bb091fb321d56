package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class FuseGatesTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static FuseGates gates(String word) {
    return FuseGates.of(word).orElseThrow();
  }

  @Test
  void takesBetweenTwoGatesTheShorterShortestAndTheLongerLongest() {
    assertThat(gates("iso8820-blade").shortestSeconds(1.5)).isEqualTo(0.25);
    assertThat(gates("iso8820-blade").longestSeconds(1.5)).isEqualTo(600);
  }

  /** At 210 % IEC 60127-2 sets only a longest time; the next shortest one stands at 275 %. */
  @Test
  void passesOverAGateThatPromisesNoShortestTime() {
    assertThat(gates("iec60127-t").shortestSeconds(2.1)).isEqualTo(0.6);
    assertThat(gates("iec60127-f").longestSeconds(2.1)).isEqualTo(1800);
  }

  @Test
  void promisesNothingPastTheLastGate() {
    assertThat(gates("iso8820-blade").shortestSeconds(6.01)).isZero();
    assertThat(gates("iso8820-blade").longestSeconds(60)).isEqualTo(0.15);
  }

  @Test
  void aCurrentExactlyAtAGateBelongsToIt() {
    double binaryNoise = 0.1 + 0.2;

    assertThat(gates("iso8820-blade").shortestSeconds(binaryNoise / 0.3 * 1.35)).isEqualTo(0.75);
  }

  @ParameterizedTest
  @ValueSource(strings = {"iso8820-blade", "iec60127-f", "iec60127-t", "ul248-14"})
  void moreCurrentNeverOpensItLater(String word) {
    Random random = new Random(20);
    for (int i = 0; i < 2000; i++) {
      double less = 0.5 + 11 * random.nextDouble();
      double more = less + 2 * random.nextDouble();

      assertThat(gates(word).shortestSeconds(more))
          .as("%s at %s and %s", word, less, more)
          .isLessThanOrEqualTo(gates(word).shortestSeconds(less));
      assertThat(gates(word).longestSeconds(more))
          .isLessThanOrEqualTo(gates(word).longestSeconds(less));
      assertThat(gates(word).shortestSeconds(less))
          .isLessThanOrEqualTo(gates(word).longestSeconds(less));
    }
  }

  @Test
  void knowsNoGatesOfAResettableFuse() {
    assertThat(FuseGates.of("none")).isEmpty();
    assertThat(gates("ul248-14").longestSeconds(1)).isEqualTo(NEVER);
  }
}
