package outshop.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values as people read them. Prefixes and rounding are those of the SI brochure, 9th ed. */
final class AmountTextTest {

  @ParameterizedTest
  @CsvSource({
    "VOLTS, 16.8, 16.8 V",
    "VOLTS, 16.849, 16.8 V",
    "VOLTS, 0, 0 V",
    "VOLTS, -3.7, -3.7 V",
    "AMPS, 0, 0 A",
    "AMPS, 0.06, 60 mA",
    "AMPS, 0.0999, 99.9 mA",
    "AMPS, 0.1, 0.1 A",
    "AMPS, -0.02, -20 mA",
    "AMPS, 4, 4 A",
    "OHMS, 0, 0 ohm",
    "OHMS, 0.12, 120 mohm",
    "OHMS, 0.499, 499 mohm",
    "OHMS, 0.5, 0.5 ohm",
    "OHMS, 9990, 9990 ohm",
    "OHMS, 10000, 10 kohm",
    "OHMS, 47000, 47 kohm",
    "SECONDS, 0, 0 s",
    "SECONDS, 0.02, 20 ms",
    "SECONDS, 0.1, 0.1 s",
    "HERTZ, 50, 50 Hz",
    "HERTZ, 999, 999 Hz",
    "HERTZ, 1000, 1 kHz",
    "HERTZ, 16500, 16.5 kHz",
    "HERTZ, 1000000, 1 MHz",
    "HERTZ, 2405240000, 2405.2 MHz",
    "METRES, 0.062, 62 mm",
    "METRES, 1, 1 m",
    "KILOGRAMS, 0.28, 280 g",
    "KILOGRAMS, 1, 1 kg",
    "FARADS, 0.000001, 1 uF",
    "GAUGE, 22, 22 AWG",
    "CELSIUS, 60, 60 °C",
    "SQUARE_MILLIMETRES, 0.5, 0.5 mm²",
    "SHARE, 1.24, 124 %",
    "COUNT, 1234567, 1234567",
    "MONEY, 12.5, 12.50",
  })
  void aValueHasItsUnitAndAFittingPrefix(Unit unit, double value, String text) {
    assertThat(AmountText.text(value, unit)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "4.545000000000001, 4.54",
    "4.555, 4.56",
    "0.00012349, 0.000123",
    "1999.6, 2000",
    "12345.6, 12346",
    "100, 100",
    "0.1, 0.1",
    "-2.5, -2.5",
    "NaN, NaN",
    "Infinity, Infinity",
  })
  void aNumberHasThreeDigitsAndNoneBeforeThePointIsLost(double value, String text) {
    assertThat(AmountText.number(value)).isEqualTo(text);
  }

  @Test
  void aShareIsAPercentage() {
    assertThat(AmountText.percent(0.985)).isEqualTo("98.5 %");
  }

  @Test
  void twoValuesThatDifferLookDifferent() {
    assertThat(AmountText.pair(volts(16.80), volts(16.81))).containsExactly("16.8 V", "16.81 V");
    assertThat(AmountText.pair(volts(16.8), volts(16.800001)))
        .containsExactly("16.8 V", "16.800001 V");
    assertThat(AmountText.pair(volts(16.8), volts(17))).containsExactly("16.8 V", "17 V");
  }

  @Test
  void twoValuesThatCountAsTheSameLookTheSame() {
    assertThat(AmountText.pair(volts(16.8), volts(16.8 + 1e-12)))
        .containsExactly("16.8 V", "16.8 V");
    // Differ by less than nine digits show, but by more than rounding.
    assertThat(AmountText.pair(volts(16.8), volts(16.80000003)))
        .containsExactly("16.8 V", "16.8 V");
  }

  private static Amount.Known volts(double value) {
    return Amount.known(value, Unit.VOLTS, Origin.MEASURED, "volts", "read");
  }
}
