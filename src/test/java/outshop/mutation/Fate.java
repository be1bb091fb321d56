package outshop.mutation;

/** What became of a mutant. */
enum Fate {
  /** An example answered otherwise than it says. */
  KILLED,
  /** The engine stopped with an error while an example ran. */
  STOPPED,
  /** Every example answered as it says: nothing noticed the fault. */
  SURVIVED,
  /** It does not compile, so it cannot get into the rule book; it is not counted. */
  NOT_COMPILED
}
