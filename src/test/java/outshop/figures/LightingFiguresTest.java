package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static outshop.figures.BasePlan.measured;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import outshop.units.Amount;
import outshop.units.Unit;

/** The figures of the lighting family, against published values where there are any. */
final class LightingFiguresTest {
  private static final String OUTPUT = "  out-1: {feeds: [front], returns: common}\n";
  private static final String TAIL =
      "parts:\n  tail: {kind: led, forward_volts: 3.1 V, rated_milliamps: 20 mA,"
          + " built_in_ohms: none}\n";

  /** IEC 60063:2015, series E24. */
  private static final List<Double> E24 =
      List.of(
          1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1,
          5.6, 6.2, 6.8, 7.5, 8.2, 9.1);

  @ParameterizedTest
  @ValueSource(doubles = {1, 10, 100, 1_000, 10_000, 100_000})
  void everyValueOfTheRowIsItsOwnNextValueAndJustAboveItTheNextOneFollows(double decade) {
    for (int i = 0; i < E24.size(); i++) {
      double value = E24.get(i) * decade;
      double next = i + 1 < E24.size() ? E24.get(i + 1) * decade : 10 * decade;

      assertThat(ResistorRow.nextUp(value)).isCloseTo(value, within(value * 1e-9));
      assertThat(ResistorRow.nextUp(value * 1.0001)).isCloseTo(next, within(next * 1e-9));
    }
  }

  /**
   * A row of 24 values a decade steps by the 24th root of ten; the older values of the standard lie
   * within 5 % of that.
   */
  @Test
  void theRowStepsByTheTwentyFourthRootOfTen() {
    double ohms = 1;
    for (int step = 0; step < 24; step++) {
      double exact = Math.pow(10, step / 24.0);
      assertThat(ohms).isCloseTo(exact, within(exact * 0.05));
      ohms = ResistorRow.nextUp(ohms * 1.001);
    }
    assertThat(ohms).isCloseTo(10, within(1e-9));
  }

  /**
   * A LED of 1.6 V and 20 mA on 6 V: 220 ohm, 88 mW, well within 1/8 W. Source: T. R. Kuphaldt,
   * Lessons in Electric Circuits, volume III, chapter 3, light-emitting diodes.
   */
  @Test
  void theTextbooksLedOnSixVolts() {
    LedResistor resistor = resistor(6, 1.6, 0.020, 0);

    assertThat(resistor.exactOhms().get().value()).isCloseTo(220, within(0.5));
    assertThat(resistor.ohms().get().value()).isCloseTo(220, within(1e-9));
    assertThat(resistor.watts().get().value()).isCloseTo(0.088, within(0.0005)).isLessThan(0.125);
    assertThat(resistor.words()).isEqualTo("a resistor of 220 ohm, 0.25 W,");
  }

  /**
   * The same LED on 24 V: 1.12 kohm and 448 mW, which overheat a resistor of 1/8 or 1/4 W. Source
   * as above. The next value of the E24 row is worked out here.
   */
  @Test
  void theTextbooksLedOnTwentyFourVolts() {
    LedResistor resistor = resistor(24, 1.6, 0.020, 0);
    Amount heat = LedResistor.heat("r", measured(0.020, Unit.AMPS), measured(1120, Unit.OHMS));

    assertThat(resistor.exactOhms().get().value()).isCloseTo(1120, within(5.0));
    assertThat(heat.get().value()).isCloseTo(0.448, within(0.0005)).isGreaterThan(0.25);
    assertThat(resistor.ohms().get().value()).isCloseTo(1200, within(1e-9));
    assertThat(resistor.watts().get().value()).isCloseTo(22.4 * 22.4 / 1200, within(1e-9));
    assertThat(resistor.ratingWatts().get().value()).isEqualTo(1);
  }

  /** By hand: (12.2 V / 20 mA) - 470 ohm = 140 ohm, and 12.2 V / 620 ohm = 19.7 mA through both. */
  @Test
  void whatIsBuiltInComesOffTheResistor() {
    LedResistor resistor = resistor(15.3, 3.1, 0.020, 470);

    assertThat(resistor.exactOhms().get().value()).isCloseTo(140, within(1e-9));
    assertThat(resistor.ohms().get().value()).isCloseTo(150, within(1e-9));
    assertThat(resistor.watts().get().value())
        .isCloseTo(Math.pow(12.2 / 620, 2) * 150, within(1e-9));
    assertThat(resistor.words()).endsWith("on top of the one built in,");
  }

  @Test
  void aLedThatNeedsNoResistorIsNotSoldOne() {
    assertThat(resistor(3, 3.1, 0.020, 0).words()).isEqualTo("a resistor for its rated current");
  }

  @ParameterizedTest
  @CsvSource({"0.0625, 0.125", "0.0626, 0.25", "0.25, 0.5", "0.2501, 1", "24, 50", "30, 60"})
  void aRatingLeavesHalfInReserve(double watts, double rating) {
    assertThat(ResistorRow.rating(watts)).isEqualTo(rating);
  }

  /** 16.8 V - 0.2 V - 1.0 V - 0.3 V - 3.1 V = 12.2 V across 620 ohm. */
  @Test
  void aLedsCurrentFollowsFromTheFullPack() throws IOException {
    LedFeed led = led(behind("620 ohm"));

    assertThat(led.fullAmps().get().value()).isCloseTo(12.2 / 620, within(1e-9));
    assertThat(led.nominalAmps().get().value()).isBetween(9.5 / 620, 9.8 / 620);
  }

  @Test
  void aSupplyOfTheDecodersOwnCountsInsteadOfThePack() throws IOException {
    Bench bench =
        BasePlan.with(
            "parts:\n",
            TAIL + "  r-tail: {kind: resistor, resistance_ohms: 100 ohm, watts: 1 W}\n",
            OUTPUT,
            "  out-2: {feeds: [tail], resistor: r-tail, returns: common, anode: common}\n",
            "function_supply_volts: none",
            "function_supply_volts: 5 V");

    assertThat(led(bench).fullAmps().get().value()).isCloseTo((5 - 0.3 - 3.1) / 100, within(1e-9));
    assertThat(led(bench).nominalAmps().get().value())
        .isCloseTo((5 - 0.3 - 3.1) / 100, within(1e-9));
  }

  @Test
  void whichPoleTheCommonCarriesDoesNotChangeTheCurrent() throws IOException {
    Bench bench =
        BasePlan.with(
            "parts:\n",
            TAIL + "  r-tail: {kind: resistor, resistance_ohms: 620 ohm, watts: 1 W}\n",
            OUTPUT,
            "  out-2: {feeds: [tail], resistor: r-tail, returns: common, anode: output}\n",
            "    common: plus",
            "    common: minus");

    assertThat(led(bench).fullAmps().get().value()).isCloseTo(12.2 / 620, within(1e-9));
  }

  @Test
  void aRegulatorFeedsALedWithWhatItHolds() throws IOException {
    Bench bench =
        BasePlan.with(
            "parts:\n",
            TAIL
                + "  r-tail: {kind: resistor, resistance_ohms: 100 ohm, watts: 1 W}\n"
                + "  reg: {kind: regulator, style: switching, output_volts: 5 V}\n",
            "wiring:\n",
            "wiring:\n  wires:\n"
                + "    - {from: switch.b, to: reg.in+, length: 100 mm}\n"
                + "    - {from: reg.in-, to: receiver.in-, length: 100 mm}\n"
                + "    - {from: reg.out+, to: r-tail.a, length: 100 mm}\n"
                + "    - {from: r-tail.b, to: tail.anode, length: 100 mm}\n"
                + "    - {from: tail.cathode, to: reg.out-, length: 100 mm}\n");

    assertThat(led(bench).fullAmps().get().value()).isCloseTo((5 - 3.1) / 100, within(1e-9));
  }

  /** Heat = current squared x resistance, whether lamps share it or not. */
  @Test
  void aSharedResistorCarriesTheSumOfItsLeds() throws IOException {
    Bench bench =
        BasePlan.with(
            "parts:\n",
            TAIL
                + "  side: {kind: led, forward_volts: 3.1 V, rated_milliamps: 20 mA, built_in_ohms: none}\n"
                + "  r-tail: {kind: resistor, resistance_ohms: 330 ohm, watts: 1 W}\n",
            OUTPUT,
            "  out-2: {feeds: [tail, side], resistor: r-tail, returns: common, anode: common}\n");

    assertThat(led(bench).fullAmps().get().value()).isCloseTo(12.2 / 330 / 2, within(1e-9));
    assertThat(only(bench, ResistorHeat.class).watts().get().value())
        .isCloseTo(12.2 * 12.2 / 330, within(1e-9));
  }

  @Test
  void theOrderOfSeriesPartsDoesNotMatter() throws IOException {
    String parts = TAIL + "  r-tail: {kind: resistor, resistance_ohms: 620 ohm, watts: 1 W}\n";
    Bench first =
        BasePlan.with(
            "parts:\n",
            parts,
            "wiring:\n",
            "wiring:\n  wires: [{from: decoder.common, to: r-tail.a, length: 90 mm}, {from: r-tail.b,"
                + " to: tail.anode, length: 80 mm}, {from: tail.cathode, to: decoder.out-2, length:"
                + " 70 mm}]\n");
    Bench last =
        BasePlan.with(
            "parts:\n",
            parts,
            "wiring:\n",
            "wiring:\n  wires: [{from: decoder.out-2, to: r-tail.b, length: 70 mm}, {from: r-tail.a,"
                + " to: tail.cathode, length: 80 mm}, {from: tail.anode, to: decoder.common,"
                + " length: 90 mm}]\n");

    assertThat(led(first).fullAmps().get().value())
        .isEqualTo(led(last).fullAmps().get().value())
        .isCloseTo(12.2 / 620, within(1e-9));
    assertThat(only(last, LedPolarity.class).standing()).isEqualTo(Standing.FINE);
  }

  @Test
  void aLedJoinedAtOneEndOnlyIsNotJudged() throws IOException {
    Bench bench =
        BasePlan.with(
            "parts:\n",
            TAIL,
            "wiring:\n",
            "wiring:\n  wires: [{from: decoder.common, to: tail.anode, length: 90 mm}]\n");

    assertThat(LightingFigures.of(bench)).noneMatch(f -> f instanceof LedFeed);
    assertThat(LightingFigures.of(bench)).noneMatch(f -> f instanceof LedLimiter);
  }

  private static LedResistor resistor(double volts, double forward, double amps, double builtIn) {
    return LedResistor.of(
        "tail",
        measured(volts, Unit.VOLTS),
        measured(forward, Unit.VOLTS),
        measured(amps, Unit.AMPS),
        measured(builtIn, Unit.OHMS));
  }

  private static Bench behind(String ohms) throws IOException {
    return BasePlan.with(
        "parts:\n",
        TAIL + "  r-tail: {kind: resistor, resistance_ohms: " + ohms + ", watts: 1 W}\n",
        OUTPUT,
        "  out-2: {feeds: [tail], resistor: r-tail, returns: common, anode: common}\n");
  }

  private static LedFeed led(Bench bench) {
    return LightingFigures.of(bench).stream()
        .filter(f -> f instanceof LedFeed led && led.at().name().equals("tail"))
        .map(LedFeed.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static <T> T only(Bench bench, Class<T> kind) {
    List<T> found =
        LightingFigures.of(bench).stream().filter(kind::isInstance).map(kind::cast).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }
}
