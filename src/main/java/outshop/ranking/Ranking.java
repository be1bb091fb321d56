package outshop.ranking;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import outshop.findings.Finding;

/**
 * The order in which findings are read: outcome, then consequence, then how far past the bound,
 * then how sure the data is, then along the power path. The last resorts (rule, headline) make the
 * order total, so that a report is the same to the byte every time.
 */
public final class Ranking {
  private Ranking() {}

  public static List<Finding> ranked(Collection<Finding> findings) {
    List<Finding> ranked = new ArrayList<>(findings);
    ranked.sort(Ranking::compare);
    return Collections.unmodifiableList(ranked);
  }

  private static int compare(Finding one, Finding other) {
    int order = one.outcome().compareTo(other.outcome());
    if (order == 0) {
      order = one.consequence().compareTo(other.consequence());
    }
    if (order == 0) {
      order = Double.compare(roundedPast(other), roundedPast(one));
    }
    if (order == 0) {
      order = one.sureness().compareTo(other.sureness());
    }
    if (order == 0) {
      order = one.at().compareTo(other.at());
    }
    if (order == 0) {
      order = one.rule().compareTo(other.rule());
    }
    return order == 0 ? one.headline().compareTo(other.headline()) : order;
  }

  /** To one part in a million, so that the last bits of a solved figure cannot turn the order. */
  private static double roundedPast(Finding finding) {
    return Math.rint(finding.past() * 1e6) / 1e6;
  }
}
