package outshop.catalogue;

import java.util.Locale;

/** What stands at the head of one column of a user's table. */
sealed interface Heading {

  /** A column of the kind. */
  record Known(Column column) implements Heading {}

  /** A column of the user's own; its cells are kept as notes. */
  record Own(String name) implements Heading {}

  /** Nothing. */
  record None() implements Heading {}

  /** A name that stands further left already; its cells are not looked at. */
  record Repeated() implements Heading {}

  /** The name to show in a message. */
  default String shown() {
    if (this instanceof Known known) {
      return known.column().name();
    }
    return this instanceof Own own ? own.name() : "";
  }

  /** A heading as it is compared: {@code "Charge Volts "} is {@code charge_volts}. */
  static String normal(String written) {
    return Blanks.inOneLine(Blanks.trimmed(written))
        .toLowerCase(Locale.ROOT)
        .replace(' ', '_')
        .replace('-', '_');
  }
}
