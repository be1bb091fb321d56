package outshop.rules;

import java.util.Set;
import outshop.circuit.At;
import outshop.findings.Outcome;
import outshop.units.Want;

/**
 * How one rule ended at one place, without a word of text: for those who ask thousands of times.
 *
 * @param outcome as a report would give it
 * @param kindest at the kindest end of all ranges
 * @param worst at the worst end of all ranges
 * @param compared whether it stands on a comparison by the whole ranges, not on a situation
 * @param wants what is missing, where it cannot be told
 */
public record Verdict(
    String rule,
    At at,
    Outcome outcome,
    Outcome kindest,
    Outcome worst,
    boolean compared,
    Set<Want> wants) {

  public Verdict {
    wants = Set.copyOf(wants);
  }

  public boolean isViolation() {
    return outcome == Outcome.VIOLATION;
  }
}
