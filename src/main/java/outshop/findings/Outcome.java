package outshop.findings;

/** How a rule ended, worst first. */
public enum Outcome {
  VIOLATION("violation"),
  WARNING("warning"),
  CANNOT_TELL("cannot tell"),
  ADVICE("advice"),
  FINE("fine");

  private final String words;

  Outcome(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** The outcome of that name. Errors: {@link IllegalArgumentException} for any other word. */
  public static Outcome of(String words) {
    for (Outcome outcome : values()) {
      if (outcome.words.equals(words)) {
        return outcome;
      }
    }
    throw new IllegalArgumentException("no outcome \"" + words + "\"");
  }
}
