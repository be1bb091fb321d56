package outshop.render.terminal;

/** How many columns of a terminal a text takes up. */
final class Glyphs {
  /** First and last of the ranges whose characters take two columns. */
  private static final int[][] WIDE = {
    {0x1100, 0x115F}, {0x2E80, 0x303E}, {0x3041, 0xA4CF}, {0xAC00, 0xD7A3}, {0xF900, 0xFAFF},
    {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1FAFF}, {0x20000, 0x3FFFD}
  };

  private Glyphs() {}

  static int columns(String text) {
    int columns = 0;
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      columns += columns(c);
    }
    return columns;
  }

  static int columns(int codePoint) {
    if (codePoint < 0x300) {
      return 1;
    }
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    for (int[] range : WIDE) {
      if (codePoint >= range[0] && codePoint <= range[1]) {
        return 2;
      }
    }
    return 1;
  }
}
