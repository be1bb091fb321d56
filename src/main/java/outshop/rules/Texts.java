package outshop.rules;

import java.util.Map;

/** Fills the gaps {@code {name}} of a rule's sentence. */
final class Texts {
  private Texts() {}

  /**
   * The sentence with every gap filled. Errors: {@link RuleBookException} for a gap nothing fills.
   */
  static String fill(String rule, String sentence, Map<String, String> values) {
    StringBuilder filled = new StringBuilder();
    int at = 0;
    while (true) {
      int open = sentence.indexOf('{', at);
      if (open < 0) {
        return filled.append(sentence, at, sentence.length()).toString();
      }
      int close = sentence.indexOf('}', open);
      String name = close < 0 ? "" : sentence.substring(open + 1, close);
      String value = values.get(name);
      if (value == null) {
        throw new RuleBookException(rule, "nothing fills {" + name + "} in: " + sentence);
      }
      filled.append(sentence, at, open).append(value);
      at = close + 1;
    }
  }
}
