package outshop.drawing;

/** What a conductor can be joined to that makes it live. */
public enum Pole {
  PACK_PLUS("pack plus", "P+"),
  PACK_MINUS("pack minus", "P−"),
  CHARGER_PLUS("charger plus", "C+"),
  CHARGER_MINUS("charger minus", "C−"),
  RAILS("live rails", "R");

  private final String words;
  private final String mark;

  Pole(String words, String mark) {
    this.words = words;
    this.mark = mark;
  }

  public String words() {
    return words;
  }

  /** A short mark for a label; a drawing explains it. */
  public String mark() {
    return mark;
  }
}
