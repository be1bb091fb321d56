package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class FuseGatesTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static FuseGates gates(String word) {
    return FuseGates.of(word).orElseThrow();
  }

  /**
   * Blade fuses: ISO 8820-3, quoted second-hand, at 100, 135, 160 and 200 %; at 350 and 600 % the
   * more cautious of that and of the row from memory. Cartridges: IEC 60127-2, 150 and 210 % (F)
   * second-hand, the rest from memory. UL 248-14: 135 % within an hour, 200 % within two minutes,
   * second-hand.
   */
  @ParameterizedTest
  @CsvSource({
    "iso8820-blade, 1.00, 360000, Infinity",
    "iso8820-blade, 1.35, 0.75, 600",
    "iso8820-blade, 1.60, 0.25, 50",
    "iso8820-blade, 2.00, 0.15, 5",
    "iso8820-blade, 3.50, 0.04, 0.5",
    "iso8820-blade, 6.00, 0.02, 0.15",
    "iec60127-f, 1.50, 3600, Infinity",
    "iec60127-f, 2.75, 0.05, 2",
    "iec60127-f, 4.00, 0.01, 0.3",
    "iec60127-f, 10.0, 0, 0.02",
    "iec60127-t, 1.50, 3600, Infinity",
    "iec60127-t, 2.75, 0.6, 10",
    "iec60127-t, 4.00, 0.15, 3",
    "iec60127-t, 10.0, 0.02, 0.3",
    "ul248-14, 1.35, 0, 3600",
    "ul248-14, 2.00, 0, 120",
  })
  void givesTheTimesOfTheStandardAtItsGates(
      String word, double multiple, double shortest, double longest) {
    assertThat(gates(word).shortestSeconds(multiple)).isEqualTo(shortest);
    assertThat(gates(word).longestSeconds(multiple)).isEqualTo(longest);
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
