package outshop.outside;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How far a source was read, or what stands in place of one; the surest first. */
public enum Reading {
  GEOMETRY("geometry", "geometry"),
  CIRCUIT("follows from the circuit", "circuit", "'s law", "wiring"),
  OWN_DATA("the part's own data", "data sheet", "own data", "marking", "manual", "the user states"),
  /** A published text that was at hand; of any other the source says "(read)" itself. */
  READ(
      "read",
      "(read",
      "openstax, ",
      "kuphaldt, lessons in electric circuits",
      "ac 43.13-1b",
      "nmra s-9.",
      "iec 60335-1:2010, 3.4.2"),
  WORKED_OUT("worked out", "worked out"),
  SECOND_HAND("second-hand", "second-hand"),
  MEMORY("from memory", "from memory"),
  PRACTICE("common practice, no source", "common practice, no source");

  private final String words;
  private final List<String> marks;

  Reading(String words, String... marks) {
    this.words = words;
    this.marks = List.of(marks);
  }

  public String words() {
    return words;
  }

  /** Those of a source that somebody published. */
  static List<Reading> ofPublished() {
    return Arrays.stream(values()).filter(r -> r.compareTo(READ) >= 0).toList();
  }

  /** The weakest of what a source's text says; empty if it says nothing of that. */
  static Optional<Reading> of(String source) {
    String text = source.toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(reading -> reading.marks.stream().anyMatch(text::contains))
        .reduce((surer, weaker) -> weaker);
  }
}
