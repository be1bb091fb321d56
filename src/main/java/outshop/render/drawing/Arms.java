package outshop.render.drawing;

import outshop.report.Aspect;

/** A semaphore arm, twelve units high: level, half raised, raised. */
final class Arms {
  static final int WIDTH = 17;

  private Arms() {}

  /** Draws it with its upper left corner at a place. */
  static void draw(Svg svg, Aspect aspect, int x, int y) {
    int turn =
        switch (aspect) {
          case STOP -> 0;
          case CAUTION -> -40;
          case CLEAR -> -80;
        };
    int pivotX = x + 3;
    int pivotY = aspect == Aspect.STOP ? y + 3 : y + 8;
    svg.open("g", "data-arm", aspect.word());
    svg.empty("path", "class", "w-post", "d", "M" + pivotX + " " + (y + 1) + " V" + (y + 12));
    svg.empty(
        "path",
        "class",
        "w-fault",
        "d",
        "M" + pivotX + " " + (pivotY - 2) + " h11 v4 h-11 z",
        "transform",
        turn == 0 ? "" : "rotate(" + turn + " " + pivotX + " " + pivotY + ")");
    svg.close();
  }
}
