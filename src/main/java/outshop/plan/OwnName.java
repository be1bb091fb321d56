package outshop.plan;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** How names of the user's own may look: parts, motors, lamps, bays, outputs, vehicles. */
final class OwnName {
  /** The form of a name, as a regular expression both here and in the JSON Schema. */
  static final String FORM = "\\p{L}[\\p{L}\\p{N}_-]{0,39}";

  static final String FORM_WORDS =
      "a letter, then letters, digits, - and _, no more than 40 in all, such as \"front-lamp\"";

  /** Words that mean something of their own where a name may stand. */
  static final List<String> RESERVED =
      List.of(
          "none",
          "frame",
          "left-rail",
          "right-rail",
          "rail",
          "common",
          "splice",
          "old_speaker",
          "yes",
          "no",
          "true",
          "false",
          "null");

  private static final Pattern PATTERN = Pattern.compile(FORM);

  private OwnName() {}

  /** What would do in the place of a name that will not. */
  static String wanted(String name) {
    return RESERVED.contains(name) ? "another name" : FORM_WORDS;
  }

  /** What is wrong with a name; empty if it will do. */
  static Optional<String> fault(String name) {
    if (RESERVED.contains(name)) {
      return Optional.of("the name has a meaning of its own");
    }
    return PATTERN.matcher(name).matches()
        ? Optional.empty()
        : Optional.of("the name cannot be used");
  }
}
