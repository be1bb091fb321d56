package outshop.input;

/**
 * Makes a text of the user's fit to be shown in one line: no control characters, and not too long.
 */
public final class Shown {
  private static final int LONGEST = 80;

  private Shown() {}

  /**
   * The text with control and direction characters written as {@code \\u....}, cut after 80
   * characters.
   */
  public static String text(String raw) {
    StringBuilder shown = new StringBuilder();
    int used = 0;
    for (int i = 0; i < raw.length(); ) {
      int c = raw.codePointAt(i);
      i += Character.charCount(c);
      if (used++ == LONGEST) {
        return shown.append("... (").append(raw.length()).append(" characters)").toString();
      }
      int type = Character.getType(c);
      if (type == Character.CONTROL || type == Character.FORMAT || type == Character.SURROGATE) {
        shown.append("\\u%04x".formatted(c));
      } else {
        shown.appendCodePoint(c);
      }
    }
    return shown.toString();
  }

  /** Whether a person would not see this character, or would see other text turned round by it. */
  public static boolean isHidden(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }
}
