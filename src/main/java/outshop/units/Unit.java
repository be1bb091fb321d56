package outshop.units;

import java.util.List;

/**
 * What a number measures, and the unit it is held in. Values are held in the unit itself (a value
 * of {@link #AMPERE_HOURS} is in ampere-hours); spellings with a prefix (mA, mohm, mm) are scaled
 * on the way in.
 */
public enum Unit {
  VOLTS("V", "7 V"),
  AMPS("A", "2.4 A"),
  OHMS("ohm", "8 ohm"),
  WATTS("W", "3 W"),
  AMPERE_HOURS("Ah", "3.4 Ah"),
  WATT_HOURS("Wh", "49 Wh"),
  METRES("m", "1.5 m"),
  SQUARE_MILLIMETRES("mm2", "0.5 mm2"),
  KILOGRAMS("kg", "240 g"),
  CELSIUS("C", "60 C"),
  KELVIN("K", "20 K"),
  KELVIN_PER_WATT("K/W", "65 K/W"),
  SECONDS("s", "0.5 s"),
  HOURS("h", "2 h"),
  DAYS("days", "30 days"),
  HERTZ("Hz", "16 kHz"),
  FARADS("F", "2200 uF"),
  GAUGE("AWG", "22 AWG"),
  SHARE("%", "60 %"),
  PER_HOUR("C", "0.5 C"),
  DECIBELS("dB", "86 dB"),
  MONEY("", "24.50"),
  COUNT("", "4");

  /** From one prefix to the next. */
  private static final double PREFIX_STEP = 1000;

  /** No wire is drawn finer: 60 AWG is 8 micrometres across (from the gauge's definition). */
  private static final double FINEST_GAUGE = 60;

  private final String symbol;
  private final String example;

  Unit(String symbol, String example) {
    this.symbol = symbol;
    this.example = example;
  }

  /** The symbol written after a number, or an empty text for plain counts and money. */
  public String symbol() {
    return symbol;
  }

  /** A value as a person would write it, shown where a wrong one was found. */
  public String example() {
    return example;
  }

  /**
   * Whether a value lies so far outside what is plausible that not even a slip of a prefix (milli,
   * kilo) explains it. Such a value is no value to compute with.
   *
   * @param low the least plausible value, in this unit
   * @param high the greatest plausible value, in this unit
   */
  public boolean isBeyondReason(double value, double low, double high) {
    if (this == GAUGE) {
      return value > FINEST_GAUGE;
    }
    return Exact.above(value, high * PREFIX_STEP)
        || (low > 0 && value > 0 && Exact.below(value, low / PREFIX_STEP));
  }

  /** How a spelling maps to a unit: {@code value in unit = written x scale}. */
  record Spelling(String text, Unit unit, double scale) {}

  /** Every spelling accepted after a number, in plans and in cells that carry their own unit. */
  static final List<Spelling> SPELLINGS =
      List.of(
          new Spelling("V", VOLTS, 1),
          new Spelling("mV", VOLTS, 1e-3),
          new Spelling("A", AMPS, 1),
          new Spelling("mA", AMPS, 1e-3),
          new Spelling("ohm", OHMS, 1),
          new Spelling("ohms", OHMS, 1),
          new Spelling("\u03a9", OHMS, 1),
          new Spelling("\u2126", OHMS, 1),
          new Spelling("mohm", OHMS, 1e-3),
          new Spelling("m\u03a9", OHMS, 1e-3),
          new Spelling("m\u2126", OHMS, 1e-3),
          new Spelling("kohm", OHMS, 1e3),
          new Spelling("k\u03a9", OHMS, 1e3),
          new Spelling("k\u2126", OHMS, 1e3),
          new Spelling("W", WATTS, 1),
          new Spelling("mW", WATTS, 1e-3),
          new Spelling("Ah", AMPERE_HOURS, 1),
          new Spelling("mAh", AMPERE_HOURS, 1e-3),
          new Spelling("Wh", WATT_HOURS, 1),
          new Spelling("m", METRES, 1),
          new Spelling("cm", METRES, 1e-2),
          new Spelling("mm", METRES, 1e-3),
          new Spelling("in", METRES, 0.0254),
          new Spelling("mm2", SQUARE_MILLIMETRES, 1),
          new Spelling("mm²", SQUARE_MILLIMETRES, 1),
          new Spelling("kg", KILOGRAMS, 1),
          new Spelling("g", KILOGRAMS, 1e-3),
          new Spelling("°C", CELSIUS, 1),
          new Spelling("degC", CELSIUS, 1),
          new Spelling("K", KELVIN, 1),
          new Spelling("K/W", KELVIN_PER_WATT, 1),
          new Spelling("s", SECONDS, 1),
          new Spelling("ms", SECONDS, 1e-3),
          new Spelling("h", HOURS, 1),
          new Spelling("hours", HOURS, 1),
          new Spelling("min", HOURS, 1.0 / 60),
          new Spelling("days", DAYS, 1),
          new Spelling("Hz", HERTZ, 1),
          new Spelling("kHz", HERTZ, 1e3),
          new Spelling("MHz", HERTZ, 1e6),
          new Spelling("F", FARADS, 1),
          new Spelling("mF", FARADS, 1e-3),
          new Spelling("uF", FARADS, 1e-6),
          new Spelling("\u00b5F", FARADS, 1e-6),
          new Spelling("\u03bcF", FARADS, 1e-6),
          new Spelling("AWG", GAUGE, 1),
          new Spelling("%", SHARE, 1e-2),
          new Spelling("dB", DECIBELS, 1));
}
