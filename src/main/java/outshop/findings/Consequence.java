package outshop.findings;

/** What happens if nothing is done, worst first. */
public enum Consequence {
  HARM("harm", "fire, burn, burst, shock or runaway"),
  DESTROYS("destroys", "a part burns out"),
  STOPS("stops", "it will not run, or not as asked"),
  DEGRADES("degrades", "it runs poorly"),
  WEARS("wears", "it lasts less long"),
  NUISANCE("nuisance", "it is a bother");

  private final String word;
  private final String meaning;

  Consequence(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  public String word() {
    return word;
  }

  public String meaning() {
    return meaning;
  }

  /** The consequence of that name. Errors: {@link IllegalArgumentException} for any other word. */
  public static Consequence of(String word) {
    for (Consequence consequence : values()) {
      if (consequence.word.equals(word)) {
        return consequence;
      }
    }
    throw new IllegalArgumentException("no consequence \"" + word + "\"");
  }
}
