package outshop.report;

import outshop.findings.Outcome;

/**
 * How the verdict's semaphore arm stands: level, half raised, raised. Renderers draw it and always
 * set the word beside it. It speaks only of what the rules compared.
 */
public enum Aspect {
  /** Level: at least one violation. */
  STOP("stop"),
  /** Half raised: a warning, something that could not be told, or nothing judged at all. */
  CAUTION("caution"),
  /** Raised: no rule objects. */
  CLEAR("clear");

  private final String word;

  Aspect(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** The arm that belongs to one outcome. */
  public static Aspect of(Outcome outcome) {
    return switch (outcome) {
      case VIOLATION -> STOP;
      case WARNING, CANNOT_TELL -> CAUTION;
      case ADVICE, FINE -> CLEAR;
    };
  }
}
