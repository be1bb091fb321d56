package outshop.units;

/**
 * A word from a fixed list, as far as it was stated: a chemistry, a yes or no, a kind of output.
 */
public sealed interface Said permits Said.Word, Said.Unsaid {

  /**
   * A stated word.
   *
   * @param label what it is, such as {@code receiver: output}
   */
  record Word(String word, Origin origin, String label) implements Said {}

  /** Nobody stated it. */
  record Unsaid(Want want) implements Said {}

  /** Whether it was stated and is this word. */
  default boolean is(String word) {
    return this instanceof Word w && w.word().equals(word);
  }

  /** Whether it was stated and is another word than this. */
  default boolean isNot(String word) {
    return this instanceof Word w && !w.word().equals(word);
  }

  default boolean isUnsaid() {
    return this instanceof Unsaid;
  }

  /** The word, or {@code otherwise} if nobody stated it. */
  default String or(String otherwise) {
    return this instanceof Word w ? w.word() : otherwise;
  }
}
