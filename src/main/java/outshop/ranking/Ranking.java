package outshop.ranking;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import outshop.findings.Finding;

/**
 * The order in which findings are read: outcome, then consequence, then how far past the bound,
 * then how sure the data is, then along the power path. The last resorts (rule, headline) make the
 * order total, so that a report is the same to the byte every time.
 */
public final class Ranking {
  private static final Comparator<Finding> ORDER =
      Comparator.comparing(Finding::outcome)
          .thenComparing(Finding::consequence)
          .thenComparing(Comparator.comparingDouble(Ranking::roundedPast).reversed())
          .thenComparing(Finding::sureness)
          .thenComparing(Finding::at)
          .thenComparing(Finding::rule)
          .thenComparing(Finding::headline);

  private Ranking() {}

  public static List<Finding> ranked(Collection<Finding> findings) {
    return findings.stream().sorted(ORDER).toList();
  }

  /** To one part in a million, so that the last bits of a solved figure cannot turn the order. */
  private static double roundedPast(Finding finding) {
    return Math.rint(finding.past() * 1e6) / 1e6;
  }
}
