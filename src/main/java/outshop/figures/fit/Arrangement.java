package outshop.figures.fit;

import java.util.List;

/** What a search for an arrangement ended with. */
public sealed interface Arrangement {

  /** One arrangement that fits, in the order in which the boxes were given. */
  record Found(List<Placed> placed) implements Arrangement {
    public Found {
      placed = List.copyOf(placed);
    }
  }

  /** There is none. */
  record None(Why why, String box) implements Arrangement {}

  /** Neither found nor ruled out within the steps allowed. */
  record Unsettled(long steps) implements Arrangement {}

  /** Why there is none. */
  enum Why {
    /** One box, named, does not go in by itself, whichever way it lies. */
    ONE_BOX,
    /** The boxes with their clearance fill more than the room. */
    VOLUME,
    /** Every arrangement was looked at. */
    ALL_TRIED
  }
}
