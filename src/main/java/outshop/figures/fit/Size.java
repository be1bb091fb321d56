package outshop.figures.fit;

import java.util.List;

/**
 * The three sides of a box or of the inside of a bay, in whole micrometres, so that every sum and
 * comparison is exact; finer than anybody measures.
 *
 * @param along the bay's length
 * @param across its width
 * @param up its height
 */
public record Size(long along, long across, long up) {
  private static final double MICROMETRES = 1e6;

  /** A thousand kilometres: far past any bay, far below where sums would overflow. */
  private static final long MOST = 1_000_000_000_000L;

  public Size {
    for (long side : List.of(along, across, up)) {
      if (side < 0 || side > MOST) {
        throw new IllegalArgumentException("no side of a box: " + side);
      }
    }
  }

  /** From metres, to the nearest micrometre; below nothing counts as nothing. */
  public static Size ofMetres(double along, double across, double up) {
    return new Size(micrometres(along), micrometres(across), micrometres(up));
  }

  /** Metres as whole micrometres, to the nearest. */
  public static long micrometres(double metres) {
    return Math.max(0, Math.min(MOST, Math.round(metres * MICROMETRES)));
  }

  /** Micrometres as metres. */
  public static double metres(long micrometres) {
    return micrometres / MICROMETRES;
  }

  /** The side along an axis: 0 along, 1 across, 2 up. */
  public long side(int axis) {
    return switch (axis) {
      case 0 -> along;
      case 1 -> across;
      case 2 -> up;
      default -> throw new IllegalArgumentException("no axis " + axis);
    };
  }

  /** Cubic metres. */
  public double cubicMetres() {
    return metres(along) * metres(across) * metres(up);
  }

  /** Whether a box of this size lies within another size, sides as they are. */
  public boolean within(Size other) {
    return along <= other.along && across <= other.across && up <= other.up;
  }

  /** Every side longer by the same. */
  public Size grown(long by) {
    return new Size(along + by, across + by, up + by);
  }

  /** Every side shorter by the same, none below nothing. */
  public Size shrunk(long by) {
    return new Size(Math.max(0, along - by), Math.max(0, across - by), Math.max(0, up - by));
  }
}
