package outshop.drawing;

import java.util.List;
import java.util.Optional;
import outshop.circuit.Link;

/**
 * A link of the circuit as a line of level and upright pieces, from the port of its {@code from} to
 * that of its {@code to}.
 *
 * @param wire its row of the wire list, where it is a wire
 * @param points two or more, the ports first and last
 * @param gap two points on the line between which it is open while it does not conduct, nearer to
 *     {@code from} first; empty for what always conducts
 * @param inside whether it lies within a box
 */
public record Route(
    Link link, Optional<WireList.Row> wire, List<Point> points, Optional<Gap> gap, boolean inside) {
  public Route {
    points = List.copyOf(points);
  }

  /** Where a line is interrupted: within the piece of the line that begins at {@code piece}. */
  public record Gap(int piece, Point first, Point second) {}
}
