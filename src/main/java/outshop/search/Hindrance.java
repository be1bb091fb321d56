package outshop.search;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Part;
import outshop.findings.Finding;
import outshop.units.Amount;
import outshop.units.AmountText;

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

  /** What a part would need for a finding to vanish. */
  public static Optional<String> needed(Finding finding) {
    if (finding.demand().isEmpty() || finding.limit().isEmpty() || finding.mark().isEmpty()) {
      return finding.cures().isEmpty() ? Optional.empty() : Optional.of(finding.cures().get(0));
    }
    Amount.Known demand = finding.demand().get();
    Amount.Known limit = finding.limit().get();
    Finding.Mark mark = finding.mark().get();
    String side = mark.upper() ? "at least " : "at most ";
    String other = mark.upper() ? "at most " : "at least ";
    double factor = limit.value() == 0 ? 1 : mark.value() / limit.value();
    return Optional.of(
        limit.label()
            + " of "
            + side
            + AmountText.text(demand.value() / factor, limit.unit())
            + ", or "
            + demand.label()
            + " of "
            + other
            + AmountText.text(mark.value(), demand.unit()));
  }
}
