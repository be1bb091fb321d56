package outshop.drawing;

/**
 * The colour a lead is drawn in and ought to have.
 *
 * <p>Sources. Leads of decoder, receiver's track output, motor and lamps: NMRA RP-9.1.1 (red right
 * rail, black left rail, orange and grey motor, white front lamp, yellow rear lamp, blue common),
 * read second-hand, and NEM 652 (2017), which agrees and adds green for the first further function;
 * violet for the second is from memory. Red for the plus and black for the minus of pack and
 * charger: common practice, no source. The two-letter codes: IEC 60757, from memory.
 */
public enum LeadColour {
  PACK_PLUS("red", "RD", "plus of pack or charger"),
  PACK_MINUS("black", "BK", "minus of pack or charger"),
  TRACK_RIGHT("red", "RD", "track output a, the right rail's lead"),
  TRACK_LEFT("black", "BK", "track output b, the left rail's lead"),
  MOTOR_PLUS("orange", "OG", "motor, the plus lead"),
  MOTOR_MINUS("grey", "GY", "motor, the minus lead"),
  LAMP_COMMON("blue", "BU", "common plus of lamps and functions"),
  OUTPUT_1("white", "WH", "function output 1, the front lamp's"),
  OUTPUT_2("yellow", "YE", "function output 2, the rear lamp's"),
  OUTPUT_3("green", "GN", "function output 3"),
  OUTPUT_4("violet", "VT", "function output 4"),
  /** The standard names none for this lead. */
  UNNAMED("any colour", "--", "no colour is named for it by the standard");

  private final String word;
  private final String code;
  private final String lead;

  LeadColour(String word, String code, String lead) {
    this.word = word;
    this.code = code;
    this.lead = lead;
  }

  /** The colour in a word, such as {@code red}. */
  public String word() {
    return word;
  }

  /** Two letters, such as {@code RD}; two dashes where no colour is named. */
  public String code() {
    return code;
  }

  /** Which lead has it, in words. */
  public String lead() {
    return lead;
  }
}
