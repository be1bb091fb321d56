package outshop.input;

/**
 * One thing wrong in a user's file, said so that it can be mended.
 *
 * @param severity whether the file can be used at all
 * @param found what stands there, or an empty text
 * @param what what is wrong, in one sentence without a full stop
 * @param expected what would be right, or an empty text
 */
public record Problem(Severity severity, Place place, String found, String what, String expected) {

  /** How bad a problem is. */
  public enum Severity {
    /** The file cannot be used. */
    ERROR,
    /** The file can be used, but a value looks like a slip. */
    UNLIKELY,
    /** The file can be used; something was read in a way worth saying. */
    NOTE
  }

  /** An error with everything said. */
  public static Problem error(Place place, String found, String what, String expected) {
    return new Problem(Severity.ERROR, place, found, what, expected);
  }

  /** The problem in one line: place, what is wrong, what stands there, what was expected. */
  public String line() {
    StringBuilder line = new StringBuilder(place.position());
    if (!place.path().isEmpty()) {
      line.append(": ").append(place.path());
    }
    line.append(": ").append(what);
    if (!found.isEmpty()) {
      line.append(": found \"").append(Shown.text(found)).append('"');
    }
    if (!expected.isEmpty()) {
      line.append("; expected ").append(expected);
    }
    return line.toString();
  }
}
