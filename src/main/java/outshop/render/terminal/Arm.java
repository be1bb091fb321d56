package outshop.render.terminal;

import java.util.List;
import outshop.report.Aspect;

/** A semaphore arm in plain characters: level, half raised, raised. */
final class Arm {
  private Arm() {}

  /** Three characters, set before the outcome's word. */
  static String small(Aspect aspect) {
    return switch (aspect) {
      case STOP -> "o==";
      case CAUTION -> "o//";
      case CLEAR -> "o||";
    };
  }

  /** Three lines of nine characters, set before the verdict. */
  static List<String> large(Aspect aspect) {
    return switch (aspect) {
      case STOP -> List.of("         ", "  o====  ", " _|_     ");
      case CAUTION -> List.of("    //   ", "  o//    ", " _|_     ");
      case CLEAR -> List.of("  ||     ", "  o|     ", " _|_     ");
    };
  }
}
