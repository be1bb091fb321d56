package outshop.render.plot;

/**
 * The colours of a plot. A page sets the variables; where none are set, everything is in the colour
 * of the text, so that a print in black and white says as much.
 */
final class Look {
  /** Lines, texts. */
  static final String INK = "currentColor";

  /** What a part takes or may carry. */
  static final String MAY = "var(--plot-may, currentColor)";

  /** What it gets or carries. */
  static final String GETS = "var(--plot-gets, currentColor)";

  /** Behind signs and texts. */
  static final String PAPER = "var(--plot-paper, Canvas)";

  static final double FAINT = 0.22;
  static final double PALE = 0.16;

  private Look() {}
}
