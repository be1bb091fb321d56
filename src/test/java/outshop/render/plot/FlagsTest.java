package outshop.render.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class FlagsTest {
  @Test
  void standAtTheirPlacesWhereThereIsRoom() {
    assertThat(Flags.spread(List.of(20.0, 60.0, 90.0), 16, 0, 100))
        .containsExactly(20.0, 60.0, 90.0);
    assertThat(Flags.spread(List.of(50.0, 50.0, 99.0), 16, 0, 100))
        .containsExactly(50.0, 66.0, 99.0);
    assertThat(Flags.spread(List.of(98.0, 99.0), 16, 0, 100)).containsExactly(84.0, 100.0);
  }

  @Test
  void neverStandOverOneAnother() {
    Random random = new Random(11);
    for (int i = 0; i < 500; i++) {
      List<Double> wanted = new ArrayList<>();
      for (int k = random.nextInt(18); k >= 0; k--) {
        wanted.add(300 * random.nextDouble());
      }
      wanted.sort(null);

      List<Double> places = Flags.spread(wanted, 16, 0, 300);

      for (int k = 1; k < places.size(); k++) {
        assertThat(places.get(k) - places.get(k - 1)).isGreaterThanOrEqualTo(16 - 1e-9);
      }
      assertThat(places.get(0)).isNotNegative();
      assertThat(places.get(places.size() - 1)).isLessThanOrEqualTo(300);
    }
  }
}
