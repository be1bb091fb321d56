package outshop.render.terminal;

import outshop.findings.Outcome;
import outshop.report.Aspect;

/** The few colours, as the terminal's own so that they follow its theme. */
enum Paint {
  NONE(""),
  BOLD("1"),
  RED("1;31"),
  YELLOW("1;33"),
  BLUE("1;34"),
  GREEN("1;32"),
  FAINT("2");

  private final String code;

  Paint(String code) {
    this.code = code;
  }

  String on(String text) {
    return code.isEmpty() || text.isBlank() ? text : "\u001b[" + code + "m" + text + "\u001b[0m";
  }

  static Paint of(Outcome outcome) {
    return switch (outcome) {
      case VIOLATION -> RED;
      case WARNING -> YELLOW;
      case CANNOT_TELL, ADVICE -> BLUE;
      case FINE -> GREEN;
    };
  }

  static Paint of(Aspect aspect) {
    return switch (aspect) {
      case STOP -> RED;
      case CAUTION -> YELLOW;
      case CLEAR -> GREEN;
    };
  }
}
