package outshop.rulebook;

import outshop.rules.Words;

/** Writes the page of words, {@code docs/words.md}. */
public final class WordPage {
  private WordPage() {}

  public static String text() {
    StringBuilder text = new StringBuilder();
    text.append("# The words\n\n");
    text.append(
        "Made from `src/main/resources/outshop/rules/words.txt`; do not edit. What the words mean that the rules and reports use, for somebody\n");
    text.append(
        "who has never wired anything. `outshop explain RULE` shows those that the rule uses. They explain and do not instruct: the makers'\n");
    text.append("instructions, local codes and qualified people come first.\n\n");
    for (Words.Word word : Words.all()) {
      text.append("- **").append(word.term()).append("**: ").append(word.meaning()).append('\n');
    }
    return text.toString();
  }
}
