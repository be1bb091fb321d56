package outshop.render.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

final class ScaleTest {
  @Test
  void standsWhereOneWouldMeasure() {
    assertThat(Scale.linear(10, 20, 50, 350).at(12.5)).isCloseTo(125, within(1e-9));
    assertThat(Scale.logarithmic(0.1, 10, 0, 300).at(1)).isCloseTo(150, within(1e-9));
    assertThat(Scale.logarithmic(0.01, 1000, 200, 0).at(10)).isCloseTo(80, within(1e-9));
  }

  @Test
  void fromValueToPlaceAndBack() {
    Random random = new Random(3);
    for (int i = 0; i < 2000; i++) {
      double low = 0.001 + random.nextDouble();
      double high = low * (1.01 + 1000 * random.nextDouble());
      double value = low + (high - low) * random.nextDouble();
      Scale scale = new Scale(low, high, 300, 20, random.nextBoolean());

      assertThat(scale.value(scale.at(value))).isCloseTo(value, within(1e-9 * high));
    }
  }

  @Test
  void whatLiesBeyondStandsAtTheEnd() {
    Scale scale = Scale.logarithmic(1, 100, 0, 200);

    assertThat(scale.at(0)).isZero();
    assertThat(scale.at(Double.POSITIVE_INFINITY)).isEqualTo(200);
  }

  @Test
  void refusesAScaleThatIsNone() {
    assertThatThrownBy(() -> Scale.linear(1, 1, 0, 9)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Scale.logarithmic(0, 1, 0, 9))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Scale.linear(0, Double.POSITIVE_INFINITY, 0, 9))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
