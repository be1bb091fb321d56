package outshop.sheets;

import java.util.List;
import java.util.Optional;

/**
 * The wiring sheet: every wire with its gauge, length, colour, both ends and the sleeve over its
 * joints.
 *
 * @param pattern the wiring's own name, such as {@code break-contact-jack}
 * @param wires in the order of the power path
 * @param notes what to mind while wiring
 */
public record WiringSheet(
    String title, String planFile, String pattern, List<Wire> wires, List<Line> notes) {
  public WiringSheet {
    wires = List.copyOf(wires);
    notes = List.copyOf(notes);
  }

  /**
   * One wire.
   *
   * @param gauge in AWG or mm2; empty where the wire's size is not stated
   * @param length empty where nobody stated it
   * @param colour the colour its lead ought to have, and that of the wire chosen where it differs
   * @param sleeve what fits over its joints
   */
  public record Wire(
      Figure number,
      String from,
      String to,
      Optional<Figure> gauge,
      Optional<Figure> length,
      String colour,
      Line sleeve) {}
}
