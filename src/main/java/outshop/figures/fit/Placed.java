package outshop.figures.fit;

/**
 * Where a box lies.
 *
 * @param lying its sides as they lie
 * @param along from the bay's end to the box, in micrometres
 * @param across from its side wall
 * @param up from its floor
 */
public record Placed(String name, Size lying, long along, long across, long up) {

  /** Where it begins on an axis: 0 along, 1 across, 2 up. */
  public long from(int axis) {
    return switch (axis) {
      case 0 -> along;
      case 1 -> across;
      case 2 -> up;
      default -> throw new IllegalArgumentException("no axis " + axis);
    };
  }

  /** Where it ends on an axis. */
  public long to(int axis) {
    return from(axis) + lying.side(axis);
  }
}
