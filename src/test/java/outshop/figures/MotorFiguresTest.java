package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.circuit.MotorValues;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * The figures of the motor family, against worked examples and answered problems of OpenStax,
 * College Physics 2e, chapter 23, section on back emf.
 */
final class MotorFiguresTest {

  /** Problem: a motor on 120 V draws 10.0 A when it first starts. (a) 12.00 ohm. */
  @Test
  void resistanceFromTheCurrentAtTheStart() throws IOException {
    Bench bench = motor("10.0 A", "120 V", "12 ohm", "1.67 A");
    Amount ohms = MotorValues.of(bench.plan(), "main", BasePlan.measured(120, Unit.VOLTS)).ohms();

    assertThat(ohms.get().value()).isCloseTo(12.00, within(0.005));
    assertThat(blocked(bench).measuredAmps().get().value())
        .isCloseTo(blocked(bench).windingAmps().get().value(), within(0.005));
  }

  /** The same, (b): with a back emf of 100 V it draws 1.67 A. */
  @Test
  void runningCurrentIsWhatTheBackEmfLeaves() throws IOException {
    Bench bench = motor("10.0 A", "120 V", "12 ohm", "1.67 A");
    Amount ohms = MotorValues.of(bench.plan(), "main", BasePlan.measured(120, Unit.VOLTS)).ohms();

    assertThat(Readings.amps("main", BasePlan.measured(120 - 100, Unit.VOLTS), ohms).get().value())
        .isCloseTo(1.67, within(0.005));
  }

  /**
   * What a running motor draws of its blocked current is what the back emf leaves of the volts.
   * Problems: 120 V, 8.00 A running, 20.0 A starting, back emf 72.0 V; a toy on 6.00 V, 3.00 A
   * running, back emf 4.50 V (the book prints no answer for its start: 12.0 A is worked out here);
   * worked example: 48.0 V, 20 A running, 120 A starting, back emf 40.0 V.
   */
  @ParameterizedTest
  @CsvSource({
    "120, 8.00, 20.0, 72.0, 0.05",
    "6.00, 3.00, 12.0, 4.50, 0.005",
    "48.0, 20.0, 120, 40.0, 0.05"
  })
  void theShareOfTheBlockedCurrentTellsTheBackEmf(
      double volts, double running, double blocked, double backEmf, double digit)
      throws IOException {
    Bench bench = motor(blocked + " A", volts + " V", volts / blocked + " ohm", running + " A");
    BlockedCurrent figures = blocked(bench);
    double share =
        figures.cruisingAmps().get().value() / (figures.nominalAmps().get().value() * volts / 14.4);

    assertThat(volts * (1 - share)).isCloseTo(backEmf, within(digit));
  }

  /** By hand: 7 V / 1.6 A = 4.375 ohm; 14.4 V and 16.8 V over that. */
  @Test
  void theBlockedCurrentIsScaledToThePack() throws IOException {
    BlockedCurrent figures = blocked(BasePlan.with());

    assertThat(figures.nominalAmps().get().value()).isCloseTo(14.4 / 4.375, within(1e-9));
    assertThat(figures.fullAmps().get().value()).isCloseTo(16.8 / 4.375, within(1e-9));
    assertThat(figures.windingAmps().get().value()).isCloseTo(7 / 4.4, within(1e-9));
    assertThat(figures.greaterAmps().get().value()).isEqualTo(1.6);
  }

  @Test
  void twoMotorsOnTwoDecodersAreNotCompared() throws IOException {
    String second =
        "  motors:\n    rear: {kind: coreless, rated: 18 V, blocked: 1 A, blocked_at: 7 V}\n";
    Bench together = BasePlan.with("  motors:\n", second);
    Bench apart =
        BasePlan.with(
            "  motors:\n",
            second,
            "parts:\n",
            "parts:\n  second: {kind: decoder, function_count: 2}\n",
            "wiring:\n",
            "wiring:\n  wires: [{from: decoder.motor+, to: main.plus, length: 90 mm}, {from:"
                + " decoder.motor-, to: main.minus, length: 90 mm}, {from: second.motor+, to:"
                + " rear.plus, length: 90 mm}, {from: second.motor-, to: rear.minus, length: 90"
                + " mm}]\n");

    assertThat(of(together, MotorsTogether.class)).hasSize(1);
    assertThat(of(apart, MotorsTogether.class)).isEmpty();
    assertThat(of(apart, MotorDrive.class))
        .extracting(MotorDrive::drive)
        .containsExactlyInAnyOrder("decoder", "second");
  }

  @Test
  void aMotorWiredTheOtherWayRoundStillHasItsDrive() throws IOException {
    Bench bench =
        BasePlan.with(
            "wiring:\n",
            "wiring:\n  wires: [{from: decoder.motor+, to: main.minus, length: 90 mm}, {from:"
                + " decoder.motor-, to: main.plus, length: 90 mm}]\n");

    assertThat(of(bench, MotorDrive.class)).hasSize(1);
    assertThat(of(bench, MotorJoined.class))
        .extracting(MotorJoined::standing)
        .containsExactly(Standing.FINE);
  }

  private static Bench motor(String blocked, String at, String winding, String cruising)
      throws IOException {
    return BasePlan.with(
        "blocked: 1.6 A", "blocked: " + blocked,
        "blocked_at: 7 V", "blocked_at: " + at,
        "winding: 4.4 ohm", "winding: " + winding,
        "cruising: 0.6 A", "cruising: " + cruising);
  }

  private static BlockedCurrent blocked(Bench bench) {
    return of(bench, BlockedCurrent.class).get(0);
  }

  private static <T> List<T> of(Bench bench, Class<T> kind) {
    return MotorFigures.of(bench).stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
