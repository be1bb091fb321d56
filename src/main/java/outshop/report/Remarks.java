package outshop.report;

import outshop.findings.Finding;

/** What every renderer says of a finding in the same words. */
public final class Remarks {
  /** Of a finding whose outcome was lowered. */
  public static final String SOFTENED =
      "at the values used this is a violation; it is counted as a warning because it rests on"
          + " values nobody stated";

  private Remarks() {}

  /** The outcome with what happens if nothing is done; what is fine has no consequence. */
  public static String outcome(Finding finding) {
    String words = consequence(finding);
    return finding.outcome().words() + (words.isEmpty() ? "" : ", " + words);
  }

  /** What happens if nothing is done, with its meaning; empty for what is fine. */
  public static String consequence(Finding finding) {
    String words = finding.consequence().word() + ": " + finding.consequence().meaning();
    return switch (finding.outcome()) {
      case FINE -> "";
      case CANNOT_TELL -> "at worst " + words;
      default -> words;
    };
  }

  /** How sure the values are. */
  public static String sureness(Finding finding) {
    return finding.sureness().words() + " (the least sure value used)";
  }
}
