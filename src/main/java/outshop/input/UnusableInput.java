package outshop.input;

import java.util.List;

/** Thrown when a user's file cannot be used; carries every error found in it. Exit code 2. */
public final class UnusableInput extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public UnusableInput(List<Problem> problems) {
    super(problems.size() + " problems in the input");
    this.problems = List.copyOf(problems);
  }

  /** Every problem, in the order of the file. */
  public List<Problem> problems() {
    return problems;
  }
}
