package outshop.figures;

import outshop.circuit.At;

/**
 * Whether the plan has what every such locomotive needs.
 *
 * @param situation the kind that is missing, as the rule's page names it, or {@code fine} where
 *     nothing is
 */
public record Presence(At at, String situation) {
  public boolean isFine() {
    return situation.equals("fine");
  }
}
