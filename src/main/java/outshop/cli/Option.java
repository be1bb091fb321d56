package outshop.cli;

import java.util.List;

/**
 * One option of a command.
 *
 * @param name with its two dashes
 * @param value what follows it, in capitals; empty where nothing does
 * @param words the words that may follow, if only some may
 * @param help one sentence
 */
record Option(String name, String value, List<String> words, String help) {
  static final Option TRACE =
      flag("--trace", "if the program itself fails, show where it happened");
  static final Option COLOUR =
      oneOf(
          "--colour",
          List.of("auto", "always", "never"),
          "auto colours on a terminal unless NO_COLOR is set; auto if left out");
  static final Option HELP = flag("--help", "this text");

  static Option flag(String name, String help) {
    return new Option(name, "", List.of(), help);
  }

  static Option valued(String name, String value, String help) {
    return new Option(name, value, List.of(), help);
  }

  static Option oneOf(String name, List<String> words, String help) {
    return new Option(name, String.join("|", words), words, help);
  }

  boolean isFlag() {
    return value.isEmpty();
  }
}
