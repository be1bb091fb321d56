package outshop.drawing;

/** A text beside a route, with the room it takes: left, top, width, height. */
public record Label(Labels.Said said, String text, int x, int y, int width, int height) {

  /** The route it belongs to. */
  public Route route() {
    return said.route();
  }

  boolean overlaps(int left, int top, int right, int bottom) {
    return x < right && left < x + width && y < bottom && top < y + height;
  }

  /** Whether it shares room with another. */
  public boolean overlaps(Label other) {
    return overlaps(other.x, other.y, other.x + other.width, other.y + other.height);
  }

  /** Whether it shares room with a box. */
  public boolean overlaps(Box box) {
    return overlaps(box.x(), box.y(), box.right(), box.bottom());
  }
}
