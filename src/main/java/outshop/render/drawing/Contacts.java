package outshop.render.drawing;

import outshop.circuit.Link;
import outshop.drawing.Point;
import outshop.drawing.Route;

/** The signs of contacts and fuses at the gap of a route. */
final class Contacts {
  private static final int LIFT = 9;

  private Contacts() {}

  static void draw(Svg svg, Route route, boolean closed) {
    if (route.gap().isEmpty() || route.link().sort() == Link.Sort.WIRE) {
      return;
    }
    Point a = route.gap().get().first();
    Point b = route.gap().get().second();
    switch (route.link().sort()) {
      case FUSE -> fuse(svg, a, b);
      case SWITCH, BREAK_CONTACT -> blade(svg, a, b, closed);
      case CONTACT -> mated(svg, a, b, closed);
      case WIRE, BODY -> {}
    }
  }

  /** IEC 60617: a rectangle with the conductor through it. */
  private static void fuse(Svg svg, Point a, Point b) {
    int x = Math.min(a.x(), b.x());
    svg.empty(
        "rect",
        "class",
        "w-sign",
        "x",
        x - 4,
        "y",
        a.y() - 5,
        "width",
        Math.abs(a.x() - b.x()) + 8,
        "height",
        10);
  }

  /** IEC 60617: a blade that meets the far contact or stands off it. */
  private static void blade(Svg svg, Point a, Point b, boolean closed) {
    boolean level = a.y() == b.y();
    int lift = closed ? 0 : LIFT;
    Point end = level ? new Point(b.x(), b.y() - lift) : new Point(b.x() + lift, b.y());
    svg.empty(
        "path",
        "class",
        "w-blade",
        "d",
        "M" + a.x() + " " + a.y() + " L" + end.x() + " " + end.y());
    svg.empty("circle", "class", "w-hollow", "cx", a.x(), "cy", a.y(), "r", 2.4);
    svg.empty("circle", "class", "w-hollow", "cx", b.x(), "cy", b.y(), "r", 2.4);
  }

  /** A pin and the socket that it goes into. */
  private static void mated(Svg svg, Point a, Point b, boolean closed) {
    int dx = Integer.signum(b.x() - a.x());
    int dy = Integer.signum(b.y() - a.y());
    Point tip = closed ? new Point(b.x() - 4 * dx, b.y() - 4 * dy) : a;
    Point tail = new Point(tip.x() - 9 * dx, tip.y() - 9 * dy);
    svg.empty(
        "path",
        "class",
        "w-blade",
        "d",
        "M" + tail.x() + " " + tail.y() + " L" + tip.x() + " " + tip.y());
    int sweep = dx > 0 || dy < 0 ? 0 : 1;
    Point one = new Point(b.x() - 5 * dx + 5 * Math.abs(dy), b.y() - 5 * dy - 5 * Math.abs(dx));
    Point other = new Point(b.x() - 5 * dx - 5 * Math.abs(dy), b.y() - 5 * dy + 5 * Math.abs(dx));
    svg.empty(
        "path",
        "class",
        "w-sign",
        "d",
        "M"
            + one.x()
            + " "
            + one.y()
            + " A5 5 0 0 "
            + (1 - sweep)
            + " "
            + other.x()
            + " "
            + other.y());
  }
}
