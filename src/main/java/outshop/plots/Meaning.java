package outshop.plots;

/** What a value in a plot says. */
public enum Meaning {
  TAKES_LEAST("takes at least"),
  TAKES_MOST("takes at most"),
  RATED("rated"),
  NO_LOAD("no load"),
  STANDING("standing"),
  CRUISING("cruising"),
  SLIPPING("wheels slipping"),
  BLOCKED("wheels blocked"),
  TOP_STEP("top speed step, running light"),
  CONTINUOUS("may carry for long"),
  PEAK("may carry for a moment"),
  SHORTEST("must hold for"),
  LONGEST("must have opened after"),
  CHARGING("charging"),
  OVERLOAD("overload lasts"),
  SHORT_LEAST("least short-circuit current"),
  SHORT_MOST("greatest short-circuit current"),
  BREAKING("can interrupt at most"),
  CHARGE("usable charge"),
  HOURS("run time"),
  COLD_HOURS("run time at 0 °C"),
  ASKED("run time asked for"),
  ALLOWED("mean current that the wish allows"),
  OHMS("impedance"),
  BY_LOAD("louder by its impedance"),
  BY_ALL("louder by impedance and sensitivity"),
  GETS_WATTS("gets at most"),
  TAKES_WATTS("takes");

  private final String words;

  Meaning(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
