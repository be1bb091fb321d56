package outshop.figures.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Which ways a box may lie. */
final class TurnsTest {
  private static final Size BOX = new Size(5, 3, 2);

  @Test
  void anyIsEveryOrderOfTheSides() {
    assertThat(Turns.ANY.ways(BOX))
        .containsExactlyInAnyOrder(
            new Size(5, 3, 2),
            new Size(3, 5, 2),
            new Size(5, 2, 3),
            new Size(2, 5, 3),
            new Size(3, 2, 5),
            new Size(2, 3, 5));
  }

  @Test
  void flatKeepsTheHeightUpright() {
    assertThat(Turns.FLAT.ways(BOX)).containsExactly(BOX, new Size(3, 5, 2));
  }

  @Test
  void noneIsAsWritten() {
    assertThat(Turns.NONE.ways(BOX)).containsExactly(BOX);
  }

  @Test
  void equalSidesMakeNoNewWay() {
    assertThat(Turns.ANY.ways(new Size(4, 4, 4))).hasSize(1);
    assertThat(Turns.ANY.ways(new Size(14, 4, 4))).hasSize(3);
    assertThat(Turns.FLAT.ways(new Size(4, 4, 9))).hasSize(1);
  }
}
