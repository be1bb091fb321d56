package outshop.search;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

/**
 * What a search found.
 *
 * @param size how many combinations there are
 * @param considered how many of them were judged: all, unless it was stopped
 * @param works how many of those considered work
 * @param best the best of all that work, in order
 * @param bestIsSure whether these are the best of all, and fewer than asked for only if there are
 *     no more
 * @param chance one that works, come upon where the search was stopped before it found any
 * @param hindrance what stands in the way, where nothing was found that works
 * @param effort what it took
 */
public record Answer(
    BigInteger size,
    BigInteger considered,
    BigInteger works,
    List<Found> best,
    boolean bestIsSure,
    Optional<Found> chance,
    Optional<Hindrance> hindrance,
    Effort effort) {

  /** What is said beside every answer. */
  public static final String CAUTION =
      "Each combination shown passes the full check. That compares data and cannot see the wiring:"
          + " the makers' instructions, local codes and qualified people come first.";

  /**
   * What it took; it differs with the number of threads.
   *
   * @param checks combinations checked in full
   * @param looks cells judged at once
   * @param boxes boxes that were found
   * @param distrusted rules that were asked of single combinations alone
   */
  public record Effort(long checks, long looks, int boxes, List<String> distrusted) {
    public Effort {
      distrusted = List.copyOf(distrusted);
    }
  }

  public Answer {
    best = List.copyOf(best);
  }

  /** Whether every combination was considered. */
  public boolean isComplete() {
    return considered.equals(size);
  }
}
