package outshop.circuit.solve;

import java.util.List;

/**
 * Thrown when a network has no direct-current solution, or none was found: a supply whose current
 * has nowhere to go, or loads that do not settle. Names the elements it hangs on.
 */
public final class NoSolution extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<String> elements;

  NoSolution(String reason, List<String> elements) {
    super(reason + ": " + String.join(", ", elements));
    this.elements = List.copyOf(elements);
  }

  /** The names of the elements it hangs on, in the order of the network; at least one. */
  public List<String> elements() {
    return elements;
  }
}
