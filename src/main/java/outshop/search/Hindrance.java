package outshop.search;

import java.util.List;
import java.util.Map;
import outshop.catalogue.Part;
import outshop.findings.Finding;

/**
 * What stands in the way where nothing works.
 *
 * @param drawn how many combinations were drawn at random and checked
 * @param byRule how many of these each rule rules out, the most first
 * @param nearest a combination with as few violations as a short search found
 * @param violations its violations, worst first
 */
public record Hindrance(
    int drawn, Map<String, Integer> byRule, List<Part> nearest, List<Finding> violations) {
  public Hindrance {
    nearest = List.copyOf(nearest);
    violations = List.copyOf(violations);
  }
}
