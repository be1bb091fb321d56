package outshop.circuit;

import java.util.List;

/** One combination of how full the pack is and what the locomotive does. */
public record LoadCase(Charge charge, Drive drive) {
  private static final String[][] WORDS = everyWords();

  /** How full the pack is. */
  public enum Charge {
    FULL("pack full"),
    NOMINAL("pack at nominal volts"),
    EMPTY("pack nearly empty");

    private final String words;

    Charge(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** What the locomotive does. */
  public enum Drive {
    STANDING("standing"),
    CRUISING("cruising"),
    SLIPPING("wheels slipping"),
    BLOCKED("wheels blocked");

    private final String words;

    Drive(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** In words, such as {@code wheels blocked, pack full}. */
  public String words() {
    return WORDS[drive.ordinal()][charge.ordinal()];
  }

  private static String[][] everyWords() {
    String[][] words = new String[Drive.values().length][Charge.values().length];
    for (Drive drive : Drive.values()) {
      for (Charge charge : Charge.values()) {
        words[drive.ordinal()][charge.ordinal()] = drive.words() + ", " + charge.words();
      }
    }
    return words;
  }

  /** All twelve, charge by charge. */
  public static List<LoadCase> all() {
    java.util.ArrayList<LoadCase> cases = new java.util.ArrayList<>();
    for (Charge charge : Charge.values()) {
      for (Drive drive : Drive.values()) {
        cases.add(new LoadCase(charge, drive));
      }
    }
    return List.copyOf(cases);
  }
}
