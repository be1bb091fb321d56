package outshop.render.drawing;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.UnaryOperator;
import outshop.drawing.Box;
import outshop.drawing.Point;
import outshop.drawing.Port;
import outshop.drawing.Sign;

/** Draws the boxes: their frame below the conductors, what they hold above. */
final class Boxes {
  private static final int SIGN_FROM_EDGE = 22;

  private final Svg svg;
  private final Faults faults;
  private final UnaryOperator<String> bars;
  private final Set<String> crossed;

  /**
   * Draws into a picture.
   *
   * @param bars the style of the bar of a terminal that goes through its box
   * @param crossed the terminals from which a conductor leads on within the box
   */
  Boxes(Svg svg, Faults faults, UnaryOperator<String> bars, Set<String> crossed) {
    this.svg = svg;
    this.faults = faults;
    this.bars = bars;
    this.crossed = crossed;
  }

  void frame(Box box) {
    if (box.sign() == Sign.SPLICE) {
      return;
    }
    String style =
        switch (box.sign()) {
          case CHARGER, PLUG -> " w-off";
          case CABLE -> " w-joint";
          default -> "";
        };
    svg.empty(
        "rect",
        "class",
        "w-box" + style + (faults.at(box.name()).isEmpty() ? "" : " w-faulty"),
        "x",
        box.x(),
        "y",
        box.y(),
        "width",
        box.width(),
        "height",
        box.height(),
        "rx",
        3,
        "data-box",
        box.name(),
        "data-kind",
        box.sign().name().toLowerCase(Locale.ROOT));
  }

  void content(Box box) {
    svg.open("g");
    svg.text("title", InWords.box(box, faults));
    words(box);
    bars(box);
    box.ports().forEach(p -> port(box, p));
    sign(box);
    List<Fault> there = faults.at(box.name());
    if (!there.isEmpty()) {
      Arms.draw(svg, there.get(0).aspect(), box.x(), box.y() - 15);
      svg.text(
          "text",
          Faults.words(there),
          "class",
          "w-word w-note",
          "x",
          box.x() + Arms.WIDTH,
          "y",
          box.y() - 5);
    }
    svg.close();
  }

  private void words(Box box) {
    if (box.sign() == Sign.SPLICE) {
      return;
    }
    int y = box.y() + 14;
    svg.text("text", box.heading(), "class", "w-heading", "x", box.x() + 6, "y", y);
    for (String line : box.lines()) {
      y += 11;
      svg.text("text", line, "class", "w-line", "x", box.x() + 6, "y", y);
    }
  }

  private void port(Box box, Port port) {
    boolean bare = box.sign() == Sign.SPLICE;
    svg.empty(
        "circle",
        "class",
        "w-solid",
        "cx",
        port.at().x(),
        "cy",
        port.at().y(),
        "r",
        bare ? 0 : 2.8,
        "data-terminal",
        port.terminal());
    boolean repeated = port.east() && hasPort(box, port.terminal(), false);
    if (repeated) {
      return;
    }
    boolean lined =
        box.sign() == Sign.RESISTOR
            || crossed.contains(port.terminal())
            || hasPort(box, port.terminal(), !port.east());
    svg.text(
        "text",
        bare ? port.terminal() : port.label(),
        "x",
        port.east() ? box.right() - 7 : box.x() + (bare ? 0 : 7),
        "y",
        port.at().y() + (lined || bare ? -4 : 4),
        "text-anchor",
        port.east() ? "end" : "");
  }

  private static boolean hasPort(Box box, String terminal, boolean east) {
    return box.ports().stream().anyMatch(p -> p.terminal().equals(terminal) && p.east() == east);
  }

  /** A terminal with two ports goes through the box. */
  private void bars(Box box) {
    for (Port port : box.ports()) {
      if (!port.east() && hasPort(box, port.terminal(), true)) {
        svg.empty(
            "path",
            "class",
            bars.apply(port.terminal()),
            "d",
            "M" + box.x() + " " + port.at().y() + " H" + box.right());
        if (box.sign() == Sign.SPLICE) {
          svg.empty(
              "circle",
              "class",
              "w-solid",
              "cx",
              box.x() + box.width() / 2,
              "cy",
              port.at().y(),
              "r",
              3.6);
        }
      }
    }
  }

  /** Its sign, where the side away from its terminals has room. */
  private void sign(Box box) {
    if (box.sign() == Sign.RESISTOR) {
      resistor(box);
      return;
    }
    boolean east = box.ports().stream().anyMatch(Port::east);
    boolean west = box.ports().stream().anyMatch(p -> !p.east());
    boolean occupied = box.ports().stream().anyMatch(p -> crossed.contains(p.terminal()));
    if ((east && west) || occupied) {
      return;
    }
    int x = east ? box.x() + SIGN_FROM_EDGE : box.right() - SIGN_FROM_EDGE;
    int low = box.ports().stream().mapToInt(p -> p.at().y()).max().orElse(box.bottom() - 12);
    int high = box.ports().stream().mapToInt(p -> p.at().y()).min().orElse(low);
    Signs.draw(svg, box.sign(), new Point(x, (low + high) / 2));
  }

  /** IEC 60617: a rectangle in the conductor. */
  private void resistor(Box box) {
    int y = box.ports().get(0).at().y();
    int middle = box.x() + box.width() / 2;
    svg.empty(
        "path",
        "class",
        "w-bar",
        "d",
        "M"
            + box.x()
            + " "
            + y
            + " H"
            + (middle - 12)
            + " M"
            + (middle + 12)
            + " "
            + y
            + " H"
            + box.right());
    svg.empty("rect", "class", "w-sign", "x", middle - 12, "y", y - 4, "width", 24, "height", 8);
  }
}
