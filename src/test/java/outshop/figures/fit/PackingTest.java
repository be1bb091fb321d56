package outshop.figures.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The search for an arrangement, against trying everything, and against what is published. */
final class PackingTest {
  private static final long SEED = Long.getLong("outshop.seed", 20261125L);
  private static final long STEPS = 200_000;

  /** Random boxes of whole sides: the answer is that of a search over every whole place. */
  @ParameterizedTest
  @EnumSource(Turns.class)
  void agreesWithTryingEveryPlace(Turns turns) {
    SplittableRandom random = new SplittableRandom(SEED + turns.ordinal());
    int found = 0;
    int ruledOutByTrying = 0;
    for (int round = 0; round < 500; round++) {
      long clearance = random.nextInt(2);
      Size room = size(random, 3 + 2 * clearance, 3);
      List<Box> boxes = boxes(random, turns, 3 + random.nextInt(3), 3);
      boolean holds = new Grid(room, clearance, boxes).holds();

      Arrangement answer = new Packing(room, clearance, boxes, STEPS).answer();

      String told =
          "seed %d, round %d: %s into %s, clearance %d"
              .formatted(SEED, round, boxes, room, clearance);
      if (holds) {
        assertThat(answer).as(told).isInstanceOf(Arrangement.Found.class);
        assertThat(faults(room, clearance, boxes, answer)).as(told).isEmpty();
        found++;
      } else {
        assertThat(answer).as(told).isInstanceOf(Arrangement.None.class);
        ruledOutByTrying += ((Arrangement.None) answer).why() == Arrangement.Why.ALL_TRIED ? 1 : 0;
      }
    }
    assertThat(found).as("arrangements found").isGreaterThan(100);
    assertThat(ruledOutByTrying).as("ruled out by the search itself").isGreaterThan(25);
  }

  /**
   * Six blocks of 1 x 2 x 2 and three unit cubes fill a cube of side 3, in one way but for turning
   * it round, with the small cubes on a diagonal (E. R. Berlekamp, J. H. Conway, R. K. Guy, Winning
   * Ways for Your Mathematical Plays, vol. 2, 1982, from memory).
   */
  @Test
  void fillsTheCubeOfSideThree() {
    List<Box> boxes = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      boxes.add(Box.of("block" + i, new Size(1, 2, 2), Turns.ANY));
    }
    for (int i = 0; i < 3; i++) {
      boxes.add(Box.of("cube" + i, new Size(1, 1, 1), Turns.ANY));
    }
    Size room = new Size(3, 3, 3);

    Arrangement answer = new Packing(room, 0, boxes, STEPS).answer();

    assertThat(answer).isInstanceOf(Arrangement.Found.class);
    assertThat(faults(room, 0, boxes, answer)).isEmpty();
    List<Placed> cubes = ((Arrangement.Found) answer).placed().subList(6, 9);
    assertThat(cubes).extracting(Placed::along).containsExactlyInAnyOrder(0L, 1L, 2L);
    assertThat(cubes).extracting(Placed::across).containsExactlyInAnyOrder(0L, 1L, 2L);
    assertThat(cubes).extracting(Placed::up).containsExactlyInAnyOrder(0L, 1L, 2L);
  }

  /**
   * A block of 1 x 2 x 2 covers an even number of the nine cells of any layer of the cube, so every
   * layer in every direction needs one of the other cells. A piece of 1 x 1 x 3 cannot give it.
   */
  @Test
  void aLongPieceInPlaceOfThreeCubesCannotFillIt() {
    List<Box> boxes = new ArrayList<>(List.of(Box.of("long", new Size(1, 1, 3), Turns.ANY)));
    for (int i = 0; i < 6; i++) {
      boxes.add(Box.of("block" + i, new Size(1, 2, 2), Turns.ANY));
    }

    assertThat(new Packing(new Size(3, 3, 3), 0, boxes, STEPS).answer())
        .isEqualTo(new Arrangement.None(Arrangement.Why.ALL_TRIED, ""));
  }

  @ParameterizedTest
  @CsvSource({
    "144000, 44000, 44000, true",
    "143999, 44000, 44000, false",
    "144000, 43999, 44000, false",
    "144000, 44000, 43999, false",
  })
  void aRoomOfExactlyTheSizeWithItsClearanceWillDo(long along, long across, long up, boolean fits) {
    List<Box> boxes = List.of(Box.of("pack", new Size(140000, 40000, 40000), Turns.ANY));

    Arrangement answer = new Packing(new Size(along, across, up), 2000, boxes, STEPS).answer();

    assertThat(answer instanceof Arrangement.Found).isEqualTo(fits);
    if (!fits) {
      assertThat(answer).isEqualTo(new Arrangement.None(Arrangement.Why.ONE_BOX, "pack"));
    }
  }

  @Test
  void saysWhyThereIsNone() {
    Box cube = Box.of("a", new Size(2, 2, 2), Turns.ANY);
    Box other = Box.of("b", new Size(2, 2, 2), Turns.ANY);
    Box flat = Box.of("c", new Size(3, 3, 3), Turns.ANY);

    assertThat(new Packing(new Size(3, 3, 3), 0, List.of(cube, other), STEPS).answer())
        .isEqualTo(new Arrangement.None(Arrangement.Why.ALL_TRIED, ""));
    assertThat(new Packing(new Size(3, 3, 3), 0, List.of(cube, flat), STEPS).answer())
        .isEqualTo(new Arrangement.None(Arrangement.Why.VOLUME, ""));
    assertThat(new Packing(new Size(2, 9, 9), 0, List.of(cube, flat), STEPS).answer())
        .isEqualTo(new Arrangement.None(Arrangement.Why.ONE_BOX, "c"));
  }

  @Test
  void givesUpUnsettledWhenItsStepsAreUsedUp() {
    List<Box> boxes = new ArrayList<>(List.of(Box.of("long", new Size(1, 1, 3), Turns.ANY)));
    for (int i = 0; i < 6; i++) {
      boxes.add(Box.of("block" + i, new Size(1, 2, 2), Turns.ANY));
    }

    assertThat(new Packing(new Size(3, 3, 3), 0, boxes, 10).answer())
        .isInstanceOf(Arrangement.Unsettled.class);
  }

  /** More room, a box less, or less clearance never takes an arrangement away. */
  @Test
  void moreRoomNeverMakesItWorse() {
    SplittableRandom random = new SplittableRandom(SEED);
    int held = 0;
    for (int round = 0; round < 300; round++) {
      Size room = size(random, 30, 40);
      List<Box> boxes = boxes(random, Turns.ANY, 3 + random.nextInt(5), 30);
      if (!(new Packing(room, 1, boxes, STEPS).answer() instanceof Arrangement.Found)) {
        continue;
      }
      held++;
      Size larger = new Size(room.along() + random.nextInt(9), room.across() + 1, room.up());

      assertThat(new Packing(larger, 1, boxes, STEPS).answer())
          .isInstanceOf(Arrangement.Found.class);
      assertThat(new Packing(room, 0, boxes, STEPS).answer()).isInstanceOf(Arrangement.Found.class);
      assertThat(new Packing(room, 1, boxes.subList(1, boxes.size()), STEPS).answer())
          .isInstanceOf(Arrangement.Found.class);
    }
    assertThat(held).isGreaterThan(50);
  }

  @Test
  void theOrderOfTheBoxesChangesNothing() {
    Random random = new Random(SEED);
    List<Box> boxes = new ArrayList<>(boxes(new SplittableRandom(SEED), Turns.ANY, 7, 30));
    Size room = new Size(80, 60, 50);
    Arrangement first = new Packing(room, 1, boxes, STEPS).answer();
    assertThat(first).isInstanceOf(Arrangement.Found.class);
    for (int round = 0; round < 5; round++) {
      Collections.shuffle(boxes, random);
      Arrangement again = new Packing(room, 1, boxes, STEPS).answer();

      assertThat(new HashSet<>(((Arrangement.Found) again).placed()))
          .isEqualTo(new HashSet<>(((Arrangement.Found) first).placed()));
    }
  }

  /** Eight boxes that were cut out of a block go back into it. */
  @Test
  void putsEightPiecesOfABlockBack() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 40; round++) {
      Size room =
          new Size(60 + random.nextInt(60), 50 + random.nextInt(40), 40 + random.nextInt(30));
      List<Size> pieces = new ArrayList<>(List.of(room));
      while (pieces.size() < 8) {
        pieces.sort(Comparator.comparingDouble(Size::cubicMetres));
        pieces.addAll(halves(pieces.remove(pieces.size() - 1), random));
      }
      List<Box> boxes = new ArrayList<>();
      for (Size piece : pieces) {
        boxes.add(Box.of("piece" + boxes.size(), piece, Turns.ANY));
      }

      Arrangement answer = new Packing(room, 0, boxes, STEPS).answer();

      assertThat(answer)
          .as("seed %d, round %d: %s", SEED, round, boxes)
          .isInstanceOf(Arrangement.Found.class);
      assertThat(faults(room, 0, boxes, answer)).isEmpty();
    }
  }

  /** A block cut in two across its longest side. */
  private static List<Size> halves(Size size, SplittableRandom random) {
    long longest = Math.max(size.along(), Math.max(size.across(), size.up()));
    long cut = 1 + random.nextLong(longest - 1);
    if (size.along() == longest) {
      return List.of(
          new Size(cut, size.across(), size.up()),
          new Size(longest - cut, size.across(), size.up()));
    }
    if (size.across() == longest) {
      return List.of(
          new Size(size.along(), cut, size.up()), new Size(size.along(), longest - cut, size.up()));
    }
    return List.of(
        new Size(size.along(), size.across(), cut),
        new Size(size.along(), size.across(), longest - cut));
  }

  private static List<String> faults(
      Size room, long clearance, List<Box> boxes, Arrangement answer) {
    return PlacementCheck.faults(room, clearance, boxes, ((Arrangement.Found) answer).placed());
  }

  private static Size size(SplittableRandom random, long least, int most) {
    return new Size(
        side(random, least, most), side(random, least, most), side(random, least, most));
  }

  private static long side(SplittableRandom random, long least, int span) {
    return least + random.nextInt(span);
  }

  private static List<Box> boxes(SplittableRandom random, Turns turns, int count, int span) {
    List<Box> boxes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      boxes.add(Box.of("box" + i, size(random, 1, span), turns));
    }
    return boxes;
  }
}
