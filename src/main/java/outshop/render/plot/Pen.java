package outshop.render.plot;

/**
 * How a drawn value's line looks.
 *
 * @param sort the class it bears: {@code plot-sign} of what is, {@code plot-bound} of what may be
 * @param dashes {@code none}, or lengths drawn and left out in turn
 */
record Pen(String sort, String colour, String width, String dashes) {
  static Pen sign(String colour, String width, String dashes) {
    return new Pen("plot-sign", colour, width, dashes);
  }

  static Pen bound(String width) {
    return new Pen("plot-bound", Look.MAY, width, "none");
  }
}
