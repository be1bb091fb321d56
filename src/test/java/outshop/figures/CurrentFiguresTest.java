package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.plan.Fitted;
import outshop.plan.PlanReader;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Origin;
import outshop.units.Unit;

/** The figures of the current family, against published values where there are any. */
final class CurrentFiguresTest {
  private static final Path BASE = Path.of("rules", "base-plan.yaml");

  /**
   * Source: "maximum amps for chassis wiring", Handbook of Electronic Tables and Formulas, as given
   * by Floyd, Electric Circuit Fundamentals, 2nd ed. (quoted second-hand).
   */
  @ParameterizedTest
  @CsvSource({
    "14, 32",
    "16, 22",
    "18, 16",
    "19, 14",
    "20, 11",
    "21, 9",
    "22, 7",
    "23, 4.7",
    "24, 3.5",
    "25, 2.7",
    "26, 2.2",
    "27, 1.7",
    "28, 1.4",
    "29, 1.2",
    "30, 0.86",
    "31, 0.70",
    "32, 0.53"
  })
  void aWireStandsWhatThePublishedTableSaysOfItsGauge(int awg, double amps) throws IOException {
    WireLoad load =
        wire(
            bench("wire: {kind: wire, awg: 20 AWG", "wire: {kind: wire, awg: " + awg + " AWG"),
            awg);

    assertThat(load.ampacityAmps().get().value()).isEqualTo(amps);
    assertThat(load.amps().get().value()).isCloseTo(1.62, within(1e-9));
  }

  /**
   * A single wire inside equipment stands at least what the same gauge carries in an aircraft's
   * bundle. Source of the bundle's values: US FAA Advisory Circular AC 43.13-1B, Table 11-9, wire
   * for 105 C.
   */
  @ParameterizedTest
  @CsvSource({"24, 2.5", "22, 3", "20, 4", "18, 6", "16, 7", "14, 10"})
  void noGaugeStandsLessThanInAnAircraftsBundle(int awg, double bundleAmps) throws IOException {
    WireLoad load =
        wire(
            bench("wire: {kind: wire, awg: 20 AWG", "wire: {kind: wire, awg: " + awg + " AWG"),
            awg);

    assertThat(load.ampacityAmps().get().value()).isGreaterThan(bundleAmps);
  }

  /** Source: US FAA Advisory Circular AC 43.13-1B (8 September 1998), Table 11-4. */
  @Test
  void switchFactorsAreThoseOfTheAdvisoryCircular() {
    assertThat(DcLoadFactors.of(12)).isEqualTo(new DcLoadFactors(5, 2, 2, 1));
    assertThat(DcLoadFactors.of(28)).isEqualTo(new DcLoadFactors(8, 4, 3, 2));
  }

  @Test
  void aPackBetweenTheTwoSystemsTakesTheStricterColumn() {
    assertThat(DcLoadFactors.of(14.5)).isEqualTo(DcLoadFactors.AT_12_VOLTS);
    assertThat(DcLoadFactors.of(14.6)).isEqualTo(DcLoadFactors.AT_28_VOLTS);
    assertThat(DcLoadFactors.of(16.8)).isEqualTo(DcLoadFactors.AT_28_VOLTS);
  }

  /**
   * A filament that reads 25.5 ohm draws 0.27 A when a bench supply of 7 V is switched on. Common
   * practice, no source.
   */
  @Test
  void theFilamentOfTheBenchDraws270Milliamps() {
    assertThat(inrush(7, Optional.empty(), 25.5)).isCloseTo(0.27, within(0.005));
  }

  /**
   * A headlight of 0.350 ohm cold on 12.0 V draws 34.3 A, against 2.50 A hot. Source: OpenStax,
   * College Physics 2e, module m42714.
   */
  @Test
  void aColdHeadlightDrawsWhatTheTextbookSays() {
    assertThat(inrush(12, Optional.empty(), 0.350)).isCloseTo(34.3, within(0.05));
  }

  /**
   * 1, 6 and 13 ohm side by side on 12.0 V draw 14.92 A. Source: OpenStax, College Physics 2e,
   * module m42356.
   */
  @Test
  void filamentsSideBySideAddUp() {
    assertThat(inrush(12, Optional.empty(), 1, 6, 13)).isCloseTo(14.92, within(0.005));
  }

  /**
   * 1 ohm in series with 6 and 13 ohm side by side on 12.0 V draws 2.35 A. Source: OpenStax,
   * College Physics 2e, module m42356.
   */
  @Test
  void aResistorInTheLeadHoldsTheSurgeBack() {
    assertThat(inrush(12, Optional.of(1.0), 6, 13)).isCloseTo(2.35, within(0.005));
  }

  /** By P = V x V / R, 50 W into 4 ohm are 14.14 V, so 3.54 A in the speaker's lead. */
  @Test
  void aSpeakersLeadCarriesTheAmplifiersFullCurrent() throws IOException {
    Bench bench =
        bench(
            Map.of(
                "impedance_ohms: 8 ohm", "impedance_ohms: 4 ohm",
                "rated_ohms: 8 ohm", "rated_ohms: 4 ohm",
                "amplifier_watts: 3 W", "amplifier_watts: 50 W"));

    WireLoad load = wire(bench, 26);

    assertThat(load.amps().get().value()).isCloseTo(3.5355, within(0.0001));
    assertThat(load.at().name()).isEqualTo("decoder.speaker+ - speaker.plus");
  }

  /**
   * What a connector that states nothing for all contacts loaded is taken to carry, against the
   * factors by which wires in a bundle are reduced. Source of those: ECSS-Q-ST-30-11C Rev.2, Table
   * 6-41, quoted second-hand.
   */
  @ParameterizedTest
  @CsvSource({"2, 0.9", "3, 0.81", "4, 0.76", "5, 0.71", "6, 0.66", "10, 0.57", "25, 0.40"})
  void theRangeAssumedForLoadedContactsHoldsThePublishedFactor(int loaded, double factor) {
    Amount.Known rating =
        ContactFigures.rating(connector(Map.of("contact_amps", 10.0)), loaded).get();

    assertThat(factor * 10).isBetween(rating.low(), rating.high());
    assertThat(rating.value()).isCloseTo(factor * 10, within(0.6));
    assertThat(rating.origin()).isEqualTo(Origin.ASSUMED);
  }

  @Test
  void aContactThatIsLoadedAloneCarriesItsOwnRating() {
    Fitted connector = connector(Map.of("contact_amps", 10.0, "all_loaded_amps", 6.0));

    assertThat(ContactFigures.rating(connector, 1).get().value()).isEqualTo(10);
    assertThat(ContactFigures.rating(connector, 2).get().value()).isEqualTo(6);
  }

  @Test
  void aConnectorWithoutAnyRatingIsNotAssumedToCarryAnything() {
    assertThat(ContactFigures.rating(connector(Map.of()), 1).isMissing()).isTrue();
    assertThat(ContactFigures.rating(connector(Map.of()), 2).isMissing()).isTrue();
  }

  /** Heat by Joule's law; the temperature lands exactly on a limit of 125 C, which passes. */
  @Test
  void aLinearRegulatorWarmsByWhatItBurnsOff() {
    Amount watts = RegulatorFigures.lossWatts("r", volts(13), volts(5), amps(0.25));
    Amount inside =
        RegulatorFigures.junctionCelsius(
            "r", value(25, Unit.CELSIUS), watts, value(50, Unit.KELVIN_PER_WATT));

    assertThat(watts.get().value()).isEqualTo(2);
    assertThat(Exact.above(inside.get().value(), 125)).isFalse();
    assertThat(Exact.above(inside.get().value(), 124.99)).isTrue();
  }

  @Test
  void twoLikePacksInParallelDeliverHalfEach() throws IOException {
    String second =
        "parts:\n  pack-b: {kind: pack, chemistry: li-ion, cells_series_count: 4,"
            + " strings_parallel_count: 2, nominal_volts: 14.4 V, full_volts: 16.8 V,"
            + " empty_volts: 12 V, cell_milliohms: 40 mohm, protection: yes,"
            + " protection_milliohms: 25 mohm, cutoff_volts: 12 V, continuous_amps: 8 A}\n";
    Bench bench =
        bench(Map.of("parts:\n", second, "  pack_to_fuse: 60 mm", "  pack_to_fuse: 50 mm"));

    List<Delivery> packs =
        facts(bench, Delivery.class).stream().filter(d -> d.kind() == Kind.PACK).toList();

    assertThat(packs).hasSize(2);
    for (Delivery pack : packs) {
      assertThat(pack.sustainedAmps().get().value()).isCloseTo(0.81, within(1e-6));
    }
  }

  @Test
  void ofOneGaugeOnlyTheBusiestWireIsReported() throws IOException {
    List<WireLoad> loads = facts(bench(Map.of()), WireLoad.class);

    assertThat(loads).extracting(WireLoad::gauge).containsExactly("20 AWG", "26 AWG");
  }

  private static double inrush(double volts, Optional<Double> resistorOhms, double... coldOhms) {
    List<Amount> cold = java.util.Arrays.stream(coldOhms).mapToObj(o -> ohms(o)).toList();
    Amount resistor =
        resistorOhms.map(CurrentFiguresTest::ohms).orElseGet(() -> new Amount.Absent("resistor"));
    return OutputFigures.inrush("output 1", volts(volts), resistor, cold).get().value();
  }

  private static Amount ohms(double value) {
    return value(value, Unit.OHMS);
  }

  private static Amount volts(double value) {
    return value(value, Unit.VOLTS);
  }

  private static Amount amps(double value) {
    return value(value, Unit.AMPS);
  }

  private static Amount value(double value, Unit unit) {
    return Amount.known(value, unit, Origin.MEASURED, value + " " + unit, "measured");
  }

  private static Fitted connector(Map<String, Double> numbers) {
    Place place = Place.whole("test");
    Part part =
        new Part(Kind.CONNECTOR, "coupler", numbers, Map.of(), Map.of(), Origin.DATA_SHEET, place);
    return new Fitted("coupler", part, place);
  }

  private static WireLoad wire(Bench bench, int awg) {
    return facts(bench, WireLoad.class).stream()
        .filter(w -> w.gauge().equals(awg + " AWG"))
        .findFirst()
        .orElseThrow();
  }

  private static <T> List<T> facts(Bench bench, Class<T> kind) {
    return CurrentFigures.of(bench).stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static Bench bench(String from, String to) throws IOException {
    return bench(Map.of(from, to));
  }

  /** The plan of the rules' examples, with pieces of its text exchanged where they first stand. */
  private static Bench bench(Map<String, String> changes) throws IOException {
    String text = Files.readString(BASE);
    for (Map.Entry<String, String> change : changes.entrySet()) {
      int at = text.indexOf(change.getKey());
      assertThat(at).as("the base plan holds \"%s\"", change.getKey()).isNotNegative();
      text =
          text.substring(0, at) + change.getValue() + text.substring(at + change.getKey().length());
    }
    PlanReader.Read read =
        PlanReader.read("test", text.getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
    assertThat(read.isUsable()).as("%s", read.problems()).isTrue();
    return Bench.of(read.plan(), read.problems());
  }
}
