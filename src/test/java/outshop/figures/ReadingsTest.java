package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static outshop.figures.BasePlan.measured;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import outshop.units.Amount;
import outshop.units.Unit;

/** What readings say, against facts of the trade and published values. */
final class ReadingsTest {

  /** A lamp that reads 25.5 ohm the same both ways is a filament. Common practice, no source. */
  @Test
  void theSameReadingBothWaysIsAFilament() {
    assertThat(Readings.lamp(ohms("25.5"), ohms("25.5"))).isEqualTo(Readings.Lamp.FILAMENT);
    assertThat(Readings.lampWords(ohms("25.5"), ohms("25.5"))).isEqualTo("25.5 ohm both ways");
  }

  /** It draws 0.27 A when a bench supply of 7 V is switched on. Common practice, no source. */
  @Test
  void thatFilamentDraws270MilliampsFromTheBenchSupply() {
    Amount amps = Readings.amps("front", measured(Readings.BENCH_VOLTS, Unit.VOLTS), ohms("25.5"));

    assertThat(Readings.BENCH_VOLTS).isEqualTo(7);
    assertThat(amps.get().value()).isCloseTo(0.27, within(0.005));
  }

  @ParameterizedTest
  @CsvSource({
    "25.5, 25.5, FILAMENT",
    "27, 30, FILAMENT",
    "30, 27, FILAMENT",
    "26.9, 30, DIODE",
    "30, 26.9, DIODE",
    "3, 3.3, FILAMENT",
    "1000, 1000, FILAMENT",
    "1000, 1001, UNDECIDED",
    "47000, 47000, UNDECIDED",
    "18000, open, DIODE",
    "open, 18000, DIODE",
    "25.5, open, DIODE",
    "open, open, UNDECIDED",
    "unread, 25.5, UNREAD",
    "25.5, unread, UNREAD",
    "open, unread, UNREAD",
    "unread, unread, UNREAD",
  })
  void readingsDecideOrSayThatTheyCannot(String forward, String reverse, Readings.Lamp says) {
    assertThat(Readings.lamp(ohms(forward), ohms(reverse))).isEqualTo(says);
  }

  /**
   * White and blue LEDs do not conduct at an ohmmeter's voltage: their forward volts begin at 3 V.
   * Source: T. R. Kuphaldt, Lessons in Electric Circuits, volume III, chapter 3, table of LEDs.
   */
  @ParameterizedTest
  @EnumSource(
      value = LedColour.class,
      names = {"WHITE", "WARM_WHITE", "BLUE"})
  void anOhmmeterDoesNotReachAWhiteOrBlueLed(LedColour colour) {
    assertThat(colour.leastVolts()).isEqualTo(3);
    assertThat(Readings.ohmmeterReaches(colour)).isFalse();
    assertThat(Readings.howToDecide()).contains("1.5 V").contains("3 V");
  }

  /** A red one begins at 1.5 V (the same table), so a meter may just make it conduct. */
  @Test
  void anOhmmeterMayReachARedLed() {
    assertThat(LedColour.RED.leastVolts()).isEqualTo(1.5);
    assertThat(Readings.ohmmeterReaches(LedColour.RED)).isTrue();
  }

  /** The whole table. Source as above. */
  @ParameterizedTest
  @CsvSource({
    "red, 1.5, 2.4",
    "orange, 2.1, 2.2",
    "yellow, 1.7, 2.8",
    "green, 1.7, 2.8",
    "blue, 3, 4",
    "white, 3, 4",
    "warm-white, 3, 4"
  })
  void forwardVoltsByColourAreThePublishedRange(String colour, double least, double most) {
    Amount.Known volts = LedColour.of(colour).orElseThrow().forwardVolts("tail").get();

    assertThat(volts.low()).isEqualTo(least);
    assertThat(volts.high()).isEqualTo(most);
    assertThat(volts.isAssumed()).isTrue();
  }

  @Test
  void aColourThatIsNoneIsNotGuessed() {
    assertThat(LedColour.of("")).isEmpty();
    assertThat(LedColour.of("filament")).isEmpty();
  }

  /**
   * A motor of 0.400 ohm on 48.0 V draws 120 A at rest; running, with 8.0 V left of them, 20 A.
   * Source: OpenStax, College Physics 2e, chapter 23, section on back emf.
   */
  @Test
  void aMotorHeldStillDrawsVoltsOverResistance() {
    Amount ohms = ohms("0.400");

    assertThat(Readings.amps("m", measured(48.0, Unit.VOLTS), ohms).get().value())
        .isCloseTo(120, within(0.5));
    assertThat(Readings.amps("m", measured(48.0 - 40.0, Unit.VOLTS), ohms).get().value())
        .isCloseTo(20, within(0.5));
  }

  @Test
  void whatWasNotReadStaysMissing() {
    Amount amps = Readings.amps("front", measured(7, Unit.VOLTS), ohms("unread"));

    assertThat(amps.isMissing()).isTrue();
    assertThat(Readings.lampWords(ohms("18000"), ohms("open")))
        .isEqualTo("18 kohm one way and open the other");
  }

  private static Amount ohms(String reading) {
    return switch (reading) {
      case "open" -> new Amount.Absent("reading");
      case "unread" -> Amount.missing("front", "reading", "ohmmeter");
      default -> measured(Double.parseDouble(reading), Unit.OHMS);
    };
  }
}
