package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
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

/** Amps through contacts, wires and packs, and a regulator's heat. */
final class CurrentFiguresTest {
  private static final Path BASE = Path.of("rules", "base-plan.yaml");

  @Test
  void aPackBetweenTheTwoSystemsTakesTheStricterColumn() {
    assertThat(DcLoadFactors.of(14.5)).isEqualTo(DcLoadFactors.AT_12_VOLTS);
    assertThat(DcLoadFactors.of(14.6)).isEqualTo(DcLoadFactors.AT_28_VOLTS);
    assertThat(DcLoadFactors.of(16.8)).isEqualTo(DcLoadFactors.AT_28_VOLTS);
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

  private static <T> List<T> facts(Bench bench, Class<T> kind) {
    return CurrentFigures.of(bench).stream().filter(kind::isInstance).map(kind::cast).toList();
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
