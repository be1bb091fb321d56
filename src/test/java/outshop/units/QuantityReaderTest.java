package outshop.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

final class QuantityReaderTest {

  @ParameterizedTest
  @CsvSource({
    "7 V, VOLTS, 7",
    "14.8 V, VOLTS, 14.8",
    "350 mV, VOLTS, 0.35",
    "2.4 A, AMPS, 2.4",
    "2400 mA, AMPS, 2.4",
    "2400mA, AMPS, 2.4",
    ".5 A, AMPS, 0.5",
    "1.5e3 mA, AMPS, 1.5",
    "+3 A, AMPS, 3",
    "-3 A, AMPS, -3",
    "8 ohm, OHMS, 8",
    "8 ohms, OHMS, 8",
    "8 \u03a9, OHMS, 8",
    "8 \u2126, OHMS, 8",
    "35 mohm, OHMS, 0.035",
    "35 m\u2126, OHMS, 0.035",
    "4.7 kohm, OHMS, 4700",
    "3 W, WATTS, 3",
    "250 mW, WATTS, 0.25",
    "3400 mAh, AMPERE_HOURS, 3.4",
    "3.4 Ah, AMPERE_HOURS, 3.4",
    "49 Wh, WATT_HOURS, 49",
    "140 mm, METRES, 0.14",
    "14 cm, METRES, 0.14",
    "2 in, METRES, 0.0508",
    "1.5 m, METRES, 1.5",
    "0.5 mm2, SQUARE_MILLIMETRES, 0.5",
    "0.5 mm\u00b2, SQUARE_MILLIMETRES, 0.5",
    "240 g, KILOGRAMS, 0.24",
    "60 C, CELSIUS, 60",
    "60 \u00b0C, CELSIUS, 60",
    "-5 degC, CELSIUS, -5",
    "20 K, KELVIN, 20",
    "65 K/W, KELVIN_PER_WATT, 65",
    "500 ms, SECONDS, 0.5",
    "90 min, HOURS, 1.5",
    "2 h, HOURS, 2",
    "30 days, DAYS, 30",
    "16 kHz, HERTZ, 16000",
    "868.3 MHz, HERTZ, 868300000",
    "2200 uF, FARADS, 0.0022",
    "2200 \u00b5F, FARADS, 0.0022",
    "2200 \u03bcF, FARADS, 0.0022",
    "22 AWG, GAUGE, 22",
    "60 %, SHARE, 0.6",
    "0.5 C, PER_HOUR, 0.5",
    "86 dB, DECIBELS, 86",
    "24.50, MONEY, 24.5",
    "4, COUNT, 4",
    "\u00a07\u00a0V\u202f, VOLTS, 7",
  })
  void reads(String text, Unit unit, double value) {
    assertThat(QuantityReader.read(text, unit)).isEqualTo(new QuantityReader.Read(value, unit));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7     | VOLTS | a value in volts, such as \"7 V\" (the unit is missing)",
        "7 A   | VOLTS | a value in volts, such as \"7 V\" (\"A\" measures amps)",
        "7 v   | VOLTS | a value in volts, such as \"7 V\" (\"v\" is not a unit; perhaps \"V\")",
        "7 lb  | VOLTS | a value in volts, such as \"7 V\" (\"lb\" is not a unit known here)",
        "V 7   | VOLTS | a value in volts, such as \"7 V\"",
        "''    | VOLTS | a value in volts, such as \"7 V\"",
        "7,4 V | VOLTS | a value in volts, such as \"7 V\" (write a point, not a comma)",
        "60 F  | CELSIUS | a value in celsius, such as \"60 C\" (\"F\" measures farads)",
        "5. A  | AMPS  | a value in amps, such as \"2.4 A\" (\". A\" is not a unit known here)",
        "1e999 A | AMPS | a value in amps, such as \"2.4 A\" (\"e999 A\" is not a unit known here)",
        "1e9999 A | AMPS | a value in amps, such as \"2.4 A\" (\"e9999 A\" is not a unit known here)",
        "4 cells | COUNT | a plain number, such as \"4\"",
        "9.50 EUR | MONEY | a plain number, such as \"24.50\"",
      })
  void refuses(String text, Unit unit, String expected) {
    assertThat(QuantityReader.read(text, unit)).isEqualTo(new QuantityReader.Unreadable(expected));
  }

  @Test
  void aTextOfMoreThanSixtyCharactersIsRefusedUnseen() {
    String refused = "a value in volts, such as \"7 V\"";

    assertThat(QuantityReader.read("7" + " ".repeat(58) + "V", Unit.VOLTS))
        .isEqualTo(new QuantityReader.Read(7, Unit.VOLTS));
    assertThat(QuantityReader.read("7" + " ".repeat(59) + "V", Unit.VOLTS))
        .isEqualTo(new QuantityReader.Unreadable(refused));
    assertThat(QuantityReader.read("7" + " ".repeat(1_000_000) + "\nx\ny", Unit.VOLTS))
        .isEqualTo(new QuantityReader.Unreadable(refused));
  }

  @Test
  void thirtyDigitsOnEitherSideOfThePointAreRead() {
    String number = "1".repeat(26) + "." + "1".repeat(30);

    assertThat(QuantityReader.read(number + "e9 V", Unit.VOLTS))
        .isInstanceOf(QuantityReader.Unreadable.class);
    assertThat(QuantityReader.read(number + " V", Unit.VOLTS))
        .isInstanceOf(QuantityReader.Read.class);
    assertThat(QuantityReader.read("1".repeat(30) + "e99 V", Unit.VOLTS))
        .isInstanceOf(QuantityReader.Read.class);
    assertThat(QuantityReader.read("1".repeat(31) + " V", Unit.VOLTS))
        .isInstanceOf(QuantityReader.Unreadable.class);
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void theExampleOfEveryUnitCanBeRead(Unit unit) {
    assertThat(QuantityReader.read(unit.example(), unit)).isInstanceOf(QuantityReader.Read.class);
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void everySpellingOfAUnitCanBeReadAndStandsOnce(Unit unit) {
    Set<String> seen = new HashSet<>();
    for (String spelling : QuantityReader.spellings(unit)) {
      assertThat(seen.add(spelling)).as(spelling).isTrue();
      assertThat(QuantityReader.read("1 " + spelling, unit))
          .isInstanceOf(QuantityReader.Read.class);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "16.8, 1e-3, 0.0168",
    "0.1, 1e-3, 0.0001",
    "2.3, 1e-3, 0.0023",
    "4.35, 1e2, 435",
    "1.1, 1.1, 1.21",
    "-5, 1, -5",
    "1e3, 1e-3, 1",
  })
  void scalesInDecimal(String number, double scale, double value) {
    assertThat(QuantityReader.scaled(number, scale)).isEqualTo(value);
  }

  @Test
  void decimalScalingIsNotTheSameAsBinaryScaling() {
    assertThat(16.8 * 1e-3).isNotEqualTo(0.0168);
    assertThat(QuantityReader.scaled("16.8", 1e-3)).isEqualTo(0.0168);
  }

  @Test
  void noTextCrashesIt() {
    String signs = "0123456789.,eE+-  AmVhohm\u03a9%C\u00b5\n\t'\"";
    for (long seed = 1; seed <= 3000; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(70); n > 0; n--) {
        text.append(signs.charAt(random.nextInt(signs.length())));
      }
      Unit unit = List.of(Unit.values()).get(random.nextInt(Unit.values().length));
      try {
        QuantityReader.Result result = QuantityReader.read(text.toString(), unit);
        if (result instanceof QuantityReader.Read read) {
          assertThat(read.value()).as("seed %d", seed).isFinite();
        } else {
          assertThat(((QuantityReader.Unreadable) result).expected())
              .as("seed %d", seed)
              .isNotEmpty();
        }
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed + " crashed the reader", e);
      }
    }
  }
}
