package outshop.render.drawing;

import outshop.drawing.Point;
import outshop.drawing.Sign;

/** Signs of parts as in IEC 60617 (from memory), for those that have a common one. */
final class Signs {
  private Signs() {}

  static void draw(Svg svg, Sign sign, Point at) {
    int x = at.x();
    int y = at.y();
    switch (sign) {
      case PACK ->
          svg.empty(
              "path",
              "class",
              "w-sign",
              "d",
              path(x, y, "M-11 -9 H11 M-5 -4 H5 M-11 2 H11 M-5 7 H5"));
      case MOTOR -> {
        svg.empty("circle", "class", "w-sign", "cx", x, "cy", y, "r", 12);
        svg.text("text", "M", "class", "w-strong", "x", x, "y", y + 4, "text-anchor", "middle");
      }
      case BULB -> {
        svg.empty("circle", "class", "w-sign", "cx", x, "cy", y, "r", 10);
        svg.empty("path", "class", "w-sign", "d", path(x, y, "M-7 -7 L7 7 M-7 7 L7 -7"));
      }
      case LED ->
          svg.empty(
              "path",
              "class",
              "w-sign",
              "d",
              path(x, y, "M-8 -6 H8 L0 6 Z M-8 6 H8 M10 -3 L16 -7 M10 2 L16 -2"));
      case SPEAKER ->
          svg.empty(
              "path",
              "class",
              "w-sign",
              "d",
              path(x, y, "M-9 -5 H-2 V5 H-9 Z M-2 -5 L8 -11 V11 L-2 5"));
      case HEATER ->
          svg.empty(
              "path",
              "class",
              "w-sign",
              "d",
              path(x, y, "M-12 -5 H12 V5 H-12 Z M-4 -5 V5 M4 -5 V5"));
      case CAPACITOR -> svg.empty("path", "class", "w-sign", "d", path(x, y, "M-9 -3 H9 M-9 3 H9"));
      default -> {
        // The rest are plain boxes.
      }
    }
  }

  /** A path whose coordinates are relative to a place, made absolute. */
  private static String path(int x, int y, String relative) {
    StringBuilder out = new StringBuilder();
    boolean level = true;
    for (String word : relative.split(" ")) {
      char first = word.charAt(0);
      boolean command = Character.isLetter(first);
      if (command) {
        out.append(out.isEmpty() ? "" : " ").append(first);
        level = first != 'V';
      }
      String number = command ? word.substring(1) : word;
      if (!number.isEmpty()) {
        out.append(command ? "" : " ").append(Integer.parseInt(number) + (level ? x : y));
        level = !level;
      }
    }
    return out.toString();
  }
}
