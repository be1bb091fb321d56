package outshop.input;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the valid word closest to a mistyped one. */
public final class Nearest {
  private Nearest() {}

  /**
   * The valid word that differs from {@code typed} by the fewest letters, if it differs by no more
   * than a third of them.
   */
  public static Optional<String> word(String typed, Collection<String> valid) {
    String low = typed.toLowerCase(Locale.ROOT);
    if (low.length() > 60) {
      return Optional.empty();
    }
    String best = "";
    int bestDistance = Integer.MAX_VALUE;
    for (String candidate : valid) {
      int distance = distance(low, candidate.toLowerCase(Locale.ROOT));
      if (distance < bestDistance) {
        bestDistance = distance;
        best = candidate;
      }
    }
    int allowed = Math.max(1, Math.max(low.length(), best.length()) / 3);
    return bestDistance <= allowed ? Optional.of(best) : Optional.empty();
  }

  /** What to append to an error about a word: {@code ; did you mean "receiver"?}, or nothing. */
  public static String hint(String typed, Collection<String> valid) {
    return word(typed, valid).map(w -> " (did you mean \"" + w + "\"?)").orElse("");
  }

  private static int distance(String a, String b) {
    int[] previous = new int[b.length() + 1];
    int[] beforePrevious = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] current = new int[b.length() + 1];
      current[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        current[j] = Math.min(Math.min(current[j - 1], previous[j]) + 1, previous[j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          current[j] = Math.min(current[j], beforePrevious[j - 2] + 1);
        }
      }
      beforePrevious = previous;
      previous = current;
    }
    return previous[b.length()];
  }
}
