package outshop.figures.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The check of an arrangement finds every kind of fault by itself. */
final class PlacementCheckTest {
  private static final Size ROOM = new Size(100, 50, 40);
  private static final Box PACK = Box.of("pack", new Size(60, 30, 20), Turns.FLAT);
  private static final Box DECODER = Box.of("decoder", new Size(20, 10, 5), Turns.NONE);
  private static final Placed PACK_THERE = new Placed("pack", new Size(60, 30, 20), 2, 2, 2);

  @Test
  void aRightArrangementHasNoFault() {
    assertThat(faults(new Placed("decoder", new Size(20, 10, 5), 64, 2, 2))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "63, 2, 2, decoder",
    "64, 1, 2, wall on axis 1",
    "64, 2, 1, wall on axis 2",
    "79, 2, 2, wall on axis 0",
    "64, 39, 2, wall on axis 1",
    "64, 2, 34, wall on axis 2",
    "30, 10, 10, too near decoder",
  })
  void aPlaceThatIsTooNearIsFound(long along, long across, long up, String said) {
    assertThat(faults(new Placed("decoder", new Size(20, 10, 5), along, across, up)))
        .hasSize(1)
        .first()
        .asString()
        .contains(said);
  }

  @Test
  void aBoxThatLiesAsItMayNotIsFound() {
    assertThat(faults(new Placed("decoder", new Size(10, 20, 5), 64, 2, 2)))
        .containsExactly("decoder may not lie as Size[along=10, across=20, up=5]");
  }

  @Test
  void aBoxThatIsMissingOrTooManyIsFound() {
    assertThat(PlacementCheck.faults(ROOM, 2, List.of(PACK, DECODER), List.of(PACK_THERE)))
        .containsExactly("placed are [pack] of [decoder, pack]");
    assertThat(PlacementCheck.faults(ROOM, 2, List.of(PACK), List.of(PACK_THERE, PACK_THERE)))
        .isNotEmpty();
  }

  private static List<String> faults(Placed decoder) {
    return PlacementCheck.faults(ROOM, 2, List.of(PACK, DECODER), List.of(PACK_THERE, decoder));
  }
}
