package outshop.search;

import java.math.BigInteger;

/** Told from time to time how far a search is. */
public interface Watched {
  /** Told nothing. */
  Watched NOBODY = (size, considered, works, best) -> {};

  /**
   * How far it is.
   *
   * @param best how many of the best are found
   */
  void at(BigInteger size, BigInteger considered, BigInteger works, int best);
}
