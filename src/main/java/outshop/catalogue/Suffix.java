package outshop.catalogue;

import java.util.List;
import outshop.units.Unit;

/** The unit that the last word of a column's name states. */
record Suffix(String word, Unit unit, double scale) {
  private static final List<Suffix> ALL =
      List.of(
          new Suffix("volts", Unit.VOLTS, 1),
          new Suffix("millivolts", Unit.VOLTS, 1e-3),
          new Suffix("amps", Unit.AMPS, 1),
          new Suffix("milliamps", Unit.AMPS, 1e-3),
          new Suffix("ohms", Unit.OHMS, 1),
          new Suffix("milliohms", Unit.OHMS, 1e-3),
          new Suffix("watts", Unit.WATTS, 1),
          new Suffix("ah", Unit.AMPERE_HOURS, 1),
          new Suffix("mah", Unit.AMPERE_HOURS, 1e-3),
          new Suffix("wh", Unit.WATT_HOURS, 1),
          new Suffix("mm", Unit.METRES, 1e-3),
          new Suffix("m", Unit.METRES, 1),
          new Suffix("mm2", Unit.SQUARE_MILLIMETRES, 1),
          new Suffix("grams", Unit.KILOGRAMS, 1e-3),
          new Suffix("celsius", Unit.CELSIUS, 1),
          new Suffix("watt", Unit.KELVIN_PER_WATT, 1),
          new Suffix("seconds", Unit.SECONDS, 1),
          new Suffix("milliseconds", Unit.SECONDS, 1e-3),
          new Suffix("hours", Unit.HOURS, 1),
          new Suffix("hz", Unit.HERTZ, 1),
          new Suffix("khz", Unit.HERTZ, 1e3),
          new Suffix("mhz", Unit.HERTZ, 1e6),
          new Suffix("microfarads", Unit.FARADS, 1e-6),
          new Suffix("percent", Unit.SHARE, 1e-2),
          new Suffix("count", Unit.COUNT, 1),
          new Suffix("awg", Unit.GAUGE, 1),
          new Suffix("each", Unit.MONEY, 1),
          new Suffix("rate", Unit.PER_HOUR, 1),
          new Suffix("spl", Unit.DECIBELS, 1));

  static Suffix of(String columnName) {
    String last = columnName.substring(columnName.lastIndexOf('_') + 1);
    return ALL.stream()
        .filter(s -> s.word.equals(last))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no unit in the column name " + columnName));
  }
}
