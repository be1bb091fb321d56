package outshop.outside;

import java.util.Locale;

/** How far the source of an expected value was read, the weakest of what its text says. */
enum Reading {
  READ("read"),
  WORKED_OUT("worked out"),
  SECOND_HAND("second-hand"),
  MEMORY("from memory"),
  PRACTICE("common practice, no source");

  private final String words;

  Reading(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  static Reading of(String source) {
    String text = source.toLowerCase(Locale.ROOT);
    Reading weakest = READ;
    for (Reading reading : values()) {
      weakest = reading != READ && text.contains(reading.words) ? reading : weakest;
    }
    return weakest;
  }
}
