package outshop.render.plot;

import java.util.Optional;
import outshop.plots.Meaning;

/**
 * The sign that stands for a value, told apart by its shape.
 *
 * @param path around 0,0
 * @param filled whether its inside is in its colour; else the paper's
 */
record Sign(String path, boolean filled) {
  private static final String CIRCLE = "M-3.6 0A3.6 3.6 0 1 0 3.6 0A3.6 3.6 0 1 0 -3.6 0Z";
  private static final String DOT = "M-2.8 0A2.8 2.8 0 1 0 2.8 0A2.8 2.8 0 1 0 -2.8 0Z";
  private static final String DIAMOND = "M0 -4.6L4.6 0L0 4.6L-4.6 0Z";
  private static final String CROSS = "M-3.6 -3.6L3.6 3.6M-3.6 3.6L3.6 -3.6";
  private static final String TRIANGLE = "M0 -4.4L4.2 3.2L-4.2 3.2Z";
  private static final String SQUARE = "M-3.4 -3.4H3.4V3.4H-3.4Z";

  /** The sign of a meaning; empty for one that is drawn as a bar, a line or an area. */
  static Optional<Sign> of(Meaning meaning) {
    return switch (meaning) {
      case NO_LOAD, STANDING -> Optional.of(new Sign(DOT, true));
      case CRUISING -> Optional.of(new Sign(CIRCLE, false));
      case SLIPPING, BY_ALL -> Optional.of(new Sign(DIAMOND, true));
      case BLOCKED -> Optional.of(new Sign(CROSS, false));
      case TOP_STEP, OVERLOAD -> Optional.of(new Sign(TRIANGLE, true));
      case COLD_HOURS -> Optional.of(new Sign(TRIANGLE, false));
      case BY_LOAD -> Optional.of(new Sign(SQUARE, false));
      case HOURS -> Optional.of(new Sign(CIRCLE, true));
      default -> Optional.empty();
    };
  }
}
