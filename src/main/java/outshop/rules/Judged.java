package outshop.rules;

import java.util.List;
import outshop.findings.Finding;
import outshop.findings.Silence;

/**
 * What all rules made of one plan, in no particular order.
 *
 * @param silences where a rule had nothing to compare
 */
public record Judged(List<Finding> findings, List<Silence> silences) {
  public Judged {
    findings = List.copyOf(findings);
    silences = List.copyOf(silences);
  }
}
