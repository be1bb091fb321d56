package outshop.figures.fit;

import java.util.List;

/**
 * A box to be put somewhere.
 *
 * @param ways the ways it may lie, the preferred one first; never empty
 */
public record Box(String name, List<Size> ways) {
  public Box {
    ways = List.copyOf(ways);
    if (ways.isEmpty()) {
      throw new IllegalArgumentException(name + " may lie in no way at all");
    }
  }

  public static Box of(String name, Size size, Turns turns) {
    return new Box(name, turns.ways(size));
  }

  /** The ways that go into a room by themselves. */
  public List<Size> waysInto(Size room) {
    return ways.stream().filter(way -> way.within(room)).toList();
  }
}
