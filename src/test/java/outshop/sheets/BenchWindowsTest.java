package outshop.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * The windows of the base plan's bench sheet, worked out by hand. The laws: Ohm's law and
 * Kirchhoff's (any textbook); resistances in series add; copper 1.7241e-8 ohm metre (IEC 60028);
 * gauge by ASTM B258; a filament's current against volts, power 0.55 (Standard Handbook for
 * Electrical Engineers, 11th ed. 1978, p. 22-8, read second-hand). The meter: volts 1 % and 0.02 V,
 * amps 2 % and 5 mA, ohms 1.5 % and 0.5 ohm.
 */
final class BenchWindowsTest {
  /** 20 AWG: d = 0.127 x 92^(16/39) = 0.8118 mm, area 0.5176 mm2, 33.31 milliohm a metre. */
  private static final double OHMS_PER_METRE_20 = 0.03331;

  /** 26 AWG: d = 0.127 x 92^(10/39) = 0.4049 mm, area 0.1288 mm2, 133.9 milliohm a metre. */
  private static final double OHMS_PER_METRE_26 = 0.1339;

  /** Nominal volts over the supply's: what a switching regulator draws more of at less volts. */
  private static final double MORE = 14.4 / 10.5;

  private static BenchSheet sheet;

  @BeforeAll
  static void draw() throws IOException {
    sheet = Drawn.sheets(Drawn.base()).bench();
  }

  private static void holds(String step, double low, double high) {
    Expected.Window window = (Expected.Window) Drawn.step(sheet, step).expected();
    // Rounded outward to three digits: an edge lies by less than one in a hundred outside.
    assertThat(window.from().value()).as("%s, from", step).isLessThanOrEqualTo(low + 1e-9);
    assertThat(window.from().value()).as("%s, from", step).isCloseTo(low, within(0.01 * low));
    assertThat(window.to().orElseThrow().value())
        .as("%s, to", step)
        .isGreaterThanOrEqualTo(high - 1e-9);
    assertThat(window.to().orElseThrow().value())
        .as("%s, to", step)
        .isCloseTo(high, within(0.01 * high));
  }

  private static double leastAmps(double amps) {
    return amps * 0.98 - 0.005;
  }

  private static double mostAmps(double amps) {
    return amps * 1.02 + 0.005;
  }

  private static double leastOhms(double ohms) {
    return ohms * 0.985 - 0.5;
  }

  private static double mostOhms(double ohms) {
    return ohms * 1.015 + 0.5;
  }

  private static double leastVolts(double volts) {
    return volts * 0.99 - 0.02;
  }

  private static double mostVolts(double volts) {
    return volts * 1.01 + 0.02;
  }

  @Test
  void theSupplysVoltsFollowFromTheParts() {
    // Receiver from 7 V: 7 x 1.05 = 7.35, up to 7.5 V. Its cut-off at 10 V: 10 x 1.05 = 10.5 V.
    assertThat(figure("supply-volts", "first-volts").value()).isEqualTo(7.5);
    assertThat(figure("idle-amps", "run-volts").value()).isEqualTo(10.5);
    holds("supply-volts", leastVolts(7.5), mostVolts(7.5));
  }

  @Test
  void theSupplysLimitsAreOneAndAHalfTimesWhatIsExpected() {
    // First power: 100 mA x 14.4 / 7.5 = 192 mA, x 1.5 = 288 mA, up to 0.3 A.
    assertThat(figure("supply-volts", "first-limit").value()).isEqualTo(0.3);
    // Motor: 100 mA x 14.4 / 10.5 + 600 mA = 737 mA, x 1.5 = 1.106 A, up to 1.15 A.
    assertThat(figure("out-1-rise", "run-limit").value()).isEqualTo(1.15);
  }

  private static Figure figure(String step, String name) {
    return Drawn.step(sheet, step).act().figures().stream()
        .filter(f -> f.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void motorAndItsLeads() {
    double ohms = 4.4 + 2 * 0.2 * OHMS_PER_METRE_20;
    holds("main-ohms", leastOhms(0.9 * ohms), mostOhms(1.1 * ohms));
  }

  @Test
  void lampAndSpeaker() {
    holds("out-1-ohms", leastOhms(0.9 * 25.5), mostOhms(1.1 * 25.5));
    holds("speaker-ohms", leastOhms(0.9 * 7), mostOhms(1.1 * 7));
  }

  @Test
  void thePlusPoleWithTheSwitchOn() {
    double ohms = (0.06 + 0.15 + 0.15) * OHMS_PER_METRE_20 + 0.015 + 0.015;
    Expected.Joined joined = (Expected.Joined) Drawn.step(sheet, "plus-out-on").expected();
    assertThat(joined.atMost().orElseThrow().value()).isCloseTo(mostOhms(ohms), within(0.002));
  }

  @Test
  void plusAgainstMinusIsNoLessThanTheLoadAtItsHardest() {
    double pack = 4 * 0.040 / 2 + 0.025;
    double feed = 0.81 * OHMS_PER_METRE_20 + 0.015 + 0.015 + 0.020;
    // Sound 0.3 A and lamp 60 mA pass the receiver; the electronics' 0.1 A do not.
    double drops = 16.8 - 0.2 - 1.0 - 0.46 * (pack + feed) - 0.36 * 0.060;
    double motor = drops / (7 / 1.6 + pack + feed + 0.060 + 0.120 + 0.4 * OHMS_PER_METRE_20);
    double amps = motor + 0.46;
    double ohms = (16.8 - amps * pack) / amps;
    Expected.Window window = (Expected.Window) Drawn.step(sheet, "plus-to-minus").expected();
    assertThat(window.from().value()).isCloseTo(leastOhms(ohms), within(0.02));
    assertThat(window.to()).isEmpty();
  }

  @Test
  void electronicsAlone() {
    holds("idle-amps", leastAmps(0.1), mostAmps(0.1 * MORE));
    Expected.Window first = (Expected.Window) Drawn.step(sheet, "first-amps").expected();
    assertThat(first.from().value()).isZero();
    assertThat(first.to().orElseThrow().value())
        .isCloseTo(mostAmps(0.1 * 14.4 / 7.5), within(0.001));
  }

  @Test
  void voltsAtTheReceiver() {
    double feed = 0.81 * OHMS_PER_METRE_20 + 0.015 + 0.015 + 0.020;
    double least = leastVolts(10.5) - 0.1 * (feed + 0.2);
    double most = mostVolts(10.5) - 0.1 * MORE * (feed + 0.01);
    holds("feed-volts", leastVolts(least), mostVolts(most));
  }

  @Test
  void aFilamentBelowItsRatedVolts() {
    double feed = 0.81 * OHMS_PER_METRE_20 + 0.05;
    double leads = 0.06 * (0.060 + 2 * 0.3 * OHMS_PER_METRE_26);
    double least = leastVolts(10.5) - 0.16 * (feed + 0.2) - 0.2 - 1.0 - 0.3 - leads;
    double most = mostVolts(10.5) - (0.06 + 0.1 * MORE) * (feed + 0.01) - 1.5 - leads;
    double low = 0.06 * Math.pow(least / 16, 0.65) * 0.9;
    double high = 0.06 * Math.pow(most / 16, 0.45) * 1.1;
    holds("out-1-rise", leastAmps(low), mostAmps(high));
  }

  @Test
  void soundAndMotorOnTopOfTheElectronics() {
    holds("sound-amps", leastAmps(0.1), mostAmps(0.1 * MORE + 0.06));
    holds("motor-amps", leastAmps(0.1 + 0.1 * 0.6), mostAmps(0.1 * MORE + 0.6));
  }

  @Test
  void nothingFlowsSwitchedOffOrWithThePlugIn() {
    for (String step : new String[] {"off-amps", "plug-in-amps"}) {
      Expected.Window window = (Expected.Window) Drawn.step(sheet, step).expected();
      assertThat(window.from().value()).isZero();
      assertThat(window.to().orElseThrow().value()).isEqualTo(0.005);
    }
  }

  @Test
  void packAndCharger() {
    holds("pack-volts", leastVolts(12), mostVolts(16.8));
    holds("pack-idle-amps", leastAmps(0.1 * 14.4 / 16.8), mostAmps(0.1 * 14.4 / 12));
    holds("charger-volts", leastVolts(16.8), mostVolts(16.8));
    holds("charging-volts", leastVolts(12), mostVolts(16.8));
    holds("charged-volts", leastVolts(0.97 * 16.8), mostVolts(16.8 + 4 * 0.05));
  }

  /** A LED with its resistor: I = (V - forward volts) / R (KVL; any textbook). */
  @Test
  void aLedFollowsItsOwnLaw() throws IOException {
    BenchSheet led =
        Drawn.sheets(
                Drawn.base(
                    "lamps:\n    front: {kind: filament, forward: 25.5 ohm, reverse: 25.5 ohm, rated: 16 V, amps: 60 mA}",
                    "lamps: {}",
                    "outputs:\n  out-1: {feeds: [front], returns: common}",
                    "outputs:\n  out-1: {feeds: [headlight], resistor: r-head, returns: common, anode: common}",
                    "  speaker:\n    kind: speaker",
                    "  headlight: {kind: led, title: LED, colour: warm-white, forward_volts: 3.1 V, rated_milliamps: 20 mA, reverse_volts: 5 V, built_in_ohms: none}\n"
                        + "  r-head: {kind: resistor, title: 1 kohm, resistance_ohms: 1000 ohm, watts: 0.25 W}\n"
                        + "  speaker:\n    kind: speaker"))
            .bench();
    Expected.Window window = (Expected.Window) Drawn.step(led, "out-1-rise").expected();
    // About 10 ohm are the LED's own.
    double low = (leastVolts(10.5) - 0.1 * 0.28 - 1.5 - 3.1) / 1010;
    double high = (mostVolts(10.5) - 1.5 - 3.1) / 1010;
    assertThat(window.from().value()).isCloseTo(leastAmps(low), within(0.0002));
    assertThat(window.to().orElseThrow().value()).isCloseTo(mostAmps(high), within(0.0002));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          , amps: 60 mA}                | }    | out-1-rise   | front: amps
          rated: 16 V, amps: 60 mA}     | amps: 60 mA} | out-1-rise   | front: rated
          cruising: 0.6 A               | kind: brushed | motor-amps   | main: cruising
          input_min_volts: 7 V          | cutoff_cells_count: 4 | idle-amps | receiver: input_min_volts
          """)
  void aStepThatLacksAValueSaysWhich(String from, String to, String step, String want)
      throws IOException {
    String text = to.equals("kind: brushed") || to.equals("cutoff_cells_count: 4") ? "" : to;
    BenchSheet open = Drawn.sheets(Drawn.base(from, text)).bench();
    Expected expected = Drawn.step(open, step).expected();
    assertThat(expected).isInstanceOf(Expected.Untold.class);
    assertThat(((Expected.Untold) expected).wants()).extracting(Want::name).contains(want);
    assertThat(expected.unit()).isEqualTo(Unit.AMPS);
  }

  @Test
  void noVoltageIsChosenThatSomePartDoesNotTake() throws IOException {
    // The receiver asks for 7 V and the decoder takes 6 V at most.
    BenchSheet torn =
        Drawn.sheets(
                Drawn.base(
                    "input_min_volts: 7 V\n    input_max_volts: 27 V",
                    "input_min_volts: 4 V\n    input_max_volts: 6 V"))
            .bench();
    Expected expected = Drawn.step(torn, "idle-amps").expected();
    assertThat(expected).isInstanceOf(Expected.Untold.class);
    assertThat(((Expected.Untold) expected).wants().toString())
        .contains("decoder: input max volts");
  }
}
