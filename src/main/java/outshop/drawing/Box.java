package outshop.drawing;

import java.util.List;

/**
 * A part, or whatever else wires end at, as a box.
 *
 * @param name its name in the plan, where findings hang
 * @param title the part's title; empty where there is none
 * @param unused its terminals that nothing is wired to and that are not drawn
 */
public record Box(
    String name,
    String title,
    Sign sign,
    int x,
    int y,
    int width,
    int height,
    List<Port> ports,
    List<String> unused) {
  /** Room kept free above every box, for marks. */
  public static final int ROOM_ABOVE = 18;

  public Box {
    ports = List.copyOf(ports);
    unused = List.copyOf(unused);
  }

  /** The name in its first line, shortened to fit. */
  public String heading() {
    return Lettering.shortened(name, Shape.HEADING_LETTERS);
  }

  /** The title in the lines under it. */
  public List<String> lines() {
    return Lettering.lines(title, Shape.LINE_LETTERS, Shape.MOST_LINES);
  }

  /** The right edge. */
  public int right() {
    return x + width;
  }

  /** The lower edge. */
  public int bottom() {
    return y + height;
  }
}
