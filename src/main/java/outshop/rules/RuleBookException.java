package outshop.rules;

/** A fault in the rule book itself: which rule, and what is wrong with it. */
public final class RuleBookException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public RuleBookException(String rule, String what) {
    super(rule + ": " + what);
  }

  public RuleBookException(String rule, String what, Throwable cause) {
    super(rule + ": " + what, cause);
  }
}
