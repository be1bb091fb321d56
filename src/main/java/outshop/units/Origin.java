package outshop.units;

/** Where a value comes from, surest first. */
public enum Origin {
  STANDARD("published standard or handbook"),
  DATA_SHEET("data sheet"),
  MEASURED("measured"),
  PLAN("stated in the plan"),
  GUESS("guess"),
  ASSUMED("assumed");

  private final String words;

  Origin(String words) {
    this.words = words;
  }

  /** The words shown to a person. */
  public String words() {
    return words;
  }

  /** The less sure of the two. */
  public Origin and(Origin other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
