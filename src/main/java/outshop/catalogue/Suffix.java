package outshop.catalogue;

import java.util.List;
import outshop.units.Unit;

/**
 * The unit that the last word of a column's name states.
 *
 * @param scale {@code value in unit = written in the column x scale}, a power of ten
 * @param symbol as written after a number; an empty text for counts and money
 */
record Suffix(String word, Unit unit, double scale, String symbol) {
  private static final List<Suffix> ALL =
      List.of(
          new Suffix("volts", Unit.VOLTS, 1, "V"),
          new Suffix("millivolts", Unit.VOLTS, 1e-3, "mV"),
          new Suffix("amps", Unit.AMPS, 1, "A"),
          new Suffix("milliamps", Unit.AMPS, 1e-3, "mA"),
          new Suffix("ohms", Unit.OHMS, 1, "ohm"),
          new Suffix("milliohms", Unit.OHMS, 1e-3, "mohm"),
          new Suffix("watts", Unit.WATTS, 1, "W"),
          new Suffix("ah", Unit.AMPERE_HOURS, 1, "Ah"),
          new Suffix("mah", Unit.AMPERE_HOURS, 1e-3, "mAh"),
          new Suffix("wh", Unit.WATT_HOURS, 1, "Wh"),
          new Suffix("mm", Unit.METRES, 1e-3, "mm"),
          new Suffix("m", Unit.METRES, 1, "m"),
          new Suffix("mm2", Unit.SQUARE_MILLIMETRES, 1, "mm2"),
          new Suffix("grams", Unit.KILOGRAMS, 1e-3, "g"),
          new Suffix("celsius", Unit.CELSIUS, 1, "C"),
          new Suffix("watt", Unit.KELVIN_PER_WATT, 1, "K/W"),
          new Suffix("seconds", Unit.SECONDS, 1, "s"),
          new Suffix("milliseconds", Unit.SECONDS, 1e-3, "ms"),
          new Suffix("hours", Unit.HOURS, 1, "h"),
          new Suffix("hz", Unit.HERTZ, 1, "Hz"),
          new Suffix("khz", Unit.HERTZ, 1e3, "kHz"),
          new Suffix("mhz", Unit.HERTZ, 1e6, "MHz"),
          new Suffix("microfarads", Unit.FARADS, 1e-6, "uF"),
          new Suffix("percent", Unit.SHARE, 1e-2, "%"),
          new Suffix("count", Unit.COUNT, 1, ""),
          new Suffix("awg", Unit.GAUGE, 1, "AWG"),
          new Suffix("each", Unit.MONEY, 1, ""),
          new Suffix("rate", Unit.PER_HOUR, 1, "C"),
          new Suffix("spl", Unit.DECIBELS, 1, "dB"));

  /** Errors: {@link IllegalStateException} if the name ends in no unit. */
  static Suffix of(String columnName) {
    String last = columnName.substring(columnName.lastIndexOf('_') + 1);
    for (Suffix suffix : ALL) {
      if (suffix.word.equals(last)) {
        return suffix;
      }
    }
    throw new IllegalStateException("no unit in the column name " + columnName);
  }
}
