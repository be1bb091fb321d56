package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.circuit.LoadCase;
import outshop.circuit.PackValues;
import outshop.input.Problem;
import outshop.plan.PlanReader;
import outshop.units.Amount;

/** Volts at the parts, against published values and circuits that can be reckoned by hand. */
final class VoltageFiguresTest {
  private static final String WIRE = "{kind: wire, awg: 20 AWG}";

  /**
   * Pack windows from cell voltages. Lithium-ion nominal 3.6 V, charged to 4.20 V (charging
   * practice for cobalt cells), empty at 3.0 V (from memory); LiFePO4 3.2, 3.65, 2.5 V (from
   * memory); nickel-metal hydride 1.2 V nominal, 1.45 V on charge and 1.0 V empty (from memory).
   * The packs are cells x those volts.
   */
  @ParameterizedTest
  @CsvSource({
    "li-ion, 2, 8.4, 7.2, 6.0",
    "li-ion, 3, 12.6, 10.8, 9.0",
    "li-ion, 4, 16.8, 14.4, 12.0",
    "li-ion, 5, 21.0, 18.0, 15.0",
    "li-ion, 6, 25.2, 21.6, 18.0",
    "li-ion, 7, 29.4, 25.2, 21.0",
    "lifepo4, 4, 14.6, 12.8, 10.0",
    "lifepo4, 6, 21.9, 19.2, 15.0",
    "nimh, 12, 17.4, 14.4, 12.0",
  })
  void packVoltsAreCellsTimesVoltsOfOneCell(
      String chemistry, int cells, double full, double nominal, double empty) {
    Bench bench =
        bench(
            "pack: {kind: pack, chemistry: %s, cells_series_count: %d}"
                .formatted(chemistry, cells));

    PackValues pack = bench.pack().orElseThrow();

    assertThat(pack.fullVolts().get().value()).isCloseTo(full, within(1e-9));
    assertThat(pack.nominalVolts().get().value()).isCloseTo(nominal, within(1e-9));
    assertThat(pack.emptyVolts().get().value()).isCloseTo(empty, within(1e-9));
  }

  /**
   * Lamp rerating. Source of the powers: Fink and Beaty, Standard Handbook for Electrical
   * Engineers, 11th ed. 1978, p. 22-8 (read second-hand); the values are reckoned from them apart
   * from this program, to the digits shown.
   */
  @ParameterizedTest
  @CsvSource({
    "0.9, 0.9437, 3.54, 5.40",
    "0.8, 0.8845, 14.55, 35.53",
    "1.0, 1.0, 1.0, 1.0",
  })
  void filamentUnderItsVoltsLastsLonger(double volts, double current, double least, double most) {
    assertThat(FilamentLaws.share(volts, FilamentLaws.CURRENT)).isCloseTo(current, within(5e-5));
    assertThat(FilamentLaws.leastLife(volts)).isCloseTo(least, within(5e-3));
    assertThat(FilamentLaws.mostLife(volts)).isCloseTo(most, within(5e-3));
  }

  /** As above, a tenth over its volts: life 0.218 to 0.319 of the rated one, current 1.0538. */
  @Test
  void filamentOverItsVoltsLastsLessLong() {
    assertThat(FilamentLaws.share(1.1, FilamentLaws.CURRENT)).isCloseTo(1.0538, within(5e-5));
    assertThat(FilamentLaws.leastLife(1.1)).isCloseTo(0.218, within(5e-4));
    assertThat(FilamentLaws.mostLife(1.1)).isCloseTo(0.319, within(5e-4));
  }

  @Test
  void filamentVoltsAndCurrentAreEachOthersInverse() {
    double current = FilamentLaws.share(0.73, FilamentLaws.CURRENT);

    assertThat(FilamentLaws.voltsShare(current)).isCloseTo(0.73, within(1e-12));
  }

  /**
   * The published curve at its ends and in the middle. Source: Chen and Rincon-Mora, IEEE
   * Transactions on Energy Conversion 21 (2006) 2, pp. 504-511 (coefficients read second-hand): at
   * s = 0 it is 3.685 - 1.031, at s = 1 it is 3.685 + 0.2156 - 0.1178 + 0.3201.
   */
  @ParameterizedTest
  @CsvSource({"0, 2.654", "1, 4.1029", "0.5, 3.8034"})
  void chargeCurveMeetsItsPublishedCoefficients(double share, double volts) {
    assertThat(ChargeCurve.volts(share)).isCloseTo(volts, within(5e-5));
  }

  @ParameterizedTest
  @CsvSource({"0.02", "0.1", "0.4", "0.77", "0.99"})
  void chargeCurveReadsBackwards(double share) {
    assertThat(ChargeCurve.share(ChargeCurve.volts(share))).isCloseTo(share, within(1e-9));
  }

  /** Four cells, empty at 12 V, a volt and six tenths short: 3.4 V and 3.0 V a cell. */
  @Test
  void unusedChargeLiesBetweenEmptyAndGivingUp() {
    PackValues pack =
        bench("pack: {kind: pack, chemistry: li-ion, cells_series_count: 4}").pack().orElseThrow();

    Amount unused = ChargeCurve.unused(pack, volts(11.4), volts(13.0));

    double expected = ChargeCurve.share(3.4) - ChargeCurve.share(3.0);
    assertThat(unused.get().value()).isCloseTo(expected, within(1e-9));
    assertThat(unused.get().isAssumed()).isTrue();
    assertThat(ChargeCurve.words(unused)).isEqualTo("1.3 % to 4.4 %");
  }

  @Test
  void unusedChargeOfAnotherChemistryIsNotTold() {
    PackValues pack =
        bench("pack: {kind: pack, chemistry: nimh, cells_series_count: 12}").pack().orElseThrow();

    Amount unused = ChargeCurve.unused(pack, volts(11.4), volts(13.0));

    assertThat(unused.isAbsent()).isTrue();
    assertThat(ChargeCurve.words(unused)).isEqualTo("an unknown part");
  }

  /**
   * The published window of a large-scale DCC decoder, 7 to 27 V (NMRA S-9.1, 2020, table 3): six
   * full lithium-ion cells stay within it, seven do not.
   */
  @Test
  void sixFullCellsAreWithinTheDecoderWindowOfTheStandardAndSevenBeyond() {
    assertThat(decoderFullVolts(6)).isCloseTo(25.0, within(1e-9)).isLessThan(27);
    assertThat(decoderFullVolts(7)).isCloseTo(29.2, within(1e-9)).isGreaterThan(27);
    assertThat(decoderFullVolts(2)).isCloseTo(8.2, within(1e-9)).isGreaterThan(7);
  }

  private static double decoderFullVolts(int cells) {
    Bench bench =
        bench(
            "pack: {kind: pack, chemistry: li-ion, cells_series_count: %d}".formatted(cells),
            "receiver: {kind: receiver, drop_volts: 0.2 V}",
            "decoder: {kind: decoder}");
    return feed(bench, Kind.DECODER).fullVolts().get().value();
  }

  @Test
  void packsInSeriesAddUpAndPacksSideBySideDoNot() {
    String cell = "{kind: pack, chemistry: li-ion, cells_series_count: 2}";
    String receiver = "receiver: {kind: receiver, input_max_volts: 20 V}";
    Bench series =
        benchWired(
            List.of("low: " + cell, "high: " + cell, receiver),
            "low.plus - high.minus",
            "high.plus - receiver.in+",
            "low.minus - receiver.in-");
    Bench parallel =
        benchWired(
            List.of("low: " + cell, "high: " + cell, receiver),
            "low.plus - high.plus",
            "low.minus - high.minus",
            "high.plus - receiver.in+",
            "low.minus - receiver.in-");

    assertThat(feed(series, Kind.RECEIVER).fullVolts().get().value()).isCloseTo(16.8, within(1e-9));
    assertThat(working(series)).isCloseTo(16.8, within(1e-9));
    assertThat(feed(parallel, Kind.RECEIVER).fullVolts().get().value())
        .isCloseTo(8.4, within(1e-9));
    assertThat(working(parallel)).isCloseTo(8.4, within(1e-9));
  }

  @Test
  void regulatorPutsOutWhatItHoldsOrItsInputWhereThatIsLess() {
    assertThat(behindRegulator("9 V")).isCloseTo(9, within(1e-9));
    assertThat(behindRegulator("24 V")).isCloseTo(16.8, within(1e-9));
  }

  private static double behindRegulator(String output) {
    Bench bench =
        benchWired(
            List.of(
                "pack: {kind: pack, chemistry: li-ion, cells_series_count: 4}",
                "reg: {kind: regulator, output_volts: %s}".formatted(output),
                "receiver: {kind: receiver}"),
            "pack.plus - reg.in+",
            "pack.minus - reg.in-",
            "reg.out+ - receiver.in+",
            "reg.out- - receiver.in-");
    return feed(bench, Kind.RECEIVER).fullVolts().get().value();
  }

  @Test
  void aPackInAShortIsStillFoundAndTheSearchEnds() {
    Bench bench =
        benchWired(
            List.of(
                "pack: {kind: pack, chemistry: li-ion, cells_series_count: 4}",
                "receiver: {kind: receiver}"),
            "pack.plus - pack.minus",
            "pack.plus - receiver.in+",
            "pack.minus - receiver.in-");

    assertThat(feed(bench, Kind.RECEIVER).fullVolts().get().value()).isCloseTo(16.8, within(1e-9));
  }

  @Test
  void aReceiverWithItsMinusLeftOffIsNotFed() {
    Bench bench =
        benchWired(
            List.of(
                "pack: {kind: pack, chemistry: li-ion, cells_series_count: 4}",
                "receiver: {kind: receiver, input_min_volts: 7 V}"),
            "pack.plus - receiver.in+");

    Amount volts = feed(bench, Kind.RECEIVER).nominalSustainedVolts();

    assertThat(volts).isInstanceOf(Amount.Missing.class);
    assertThat(((Amount.Missing) volts).wants().get(0).name())
        .isEqualTo("receiver: wires that feed it");
  }

  /** The bounds of the rule are written as shares of 24 V: 60 V is 250 % of it. */
  @Test
  void extraLowVoltageEndsAtTwoAndAHalfTimesTheToyYardstick() {
    assertThat(WorkingVoltage.EXTRA_LOW_VOLTS).isEqualTo(2.5 * WorkingVoltage.TOY_VOLTS);
  }

  @Test
  void sharesAreWrittenWithoutStringsOfNoughts() {
    assertThat(ShareWords.between(0.2176, 0.3186)).isEqualTo("21.8 % to 31.9 %");
    assertThat(ShareWords.between(0, 0.0132)).isEqualTo("0 % to 1.3 %");
    assertThat(ShareWords.between(1e-9, 1e-4)).isEqualTo("less than 1 %");
    assertThat(ShareWords.of(0.297)).isEqualTo("29.7 %");
  }

  /** A lamp burns alike whether the decoder's common lead is its plus or its minus. */
  @Test
  void aLampDrawsItsCurrentAlsoWhereTheCommonLeadIsMinus() throws IOException {
    String plan = Files.readString(Path.of("rules/base-plan.yaml"));
    Bench plus = read(plan);
    Bench minus = read(plan.replace("common: plus", "common: minus"));
    LoadCase standing = new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING);

    double lampVolts = plus.cases().volts(standing, "front.a", "front.b").get().value();

    assertThat(minus.plan().parts(Kind.DECODER).get(0).said("common").is("minus")).isTrue();
    assertThat(minus.cases().amps(standing, "front").get().value()).isCloseTo(0.06, within(1e-9));
    assertThat(minus.cases().volts(standing, "front.a", "front.b").get().value())
        .isCloseTo(lampVolts, within(1e-9));
    assertThat(lampVolts).isBetween(15.2, 15.3);
  }

  @Test
  void withoutAPackThereAreNoVolts() {
    assertThat(VoltageFigures.of(bench("receiver: {kind: receiver}"))).isEmpty();
  }

  private static Amount volts(double volts) {
    return outshop.plan.Plan.fixed(volts, outshop.units.Unit.VOLTS, "volts " + volts, "example");
  }

  private static double working(Bench bench) {
    return VoltageFigures.of(bench).stream()
        .filter(WorkingVoltage.class::isInstance)
        .map(WorkingVoltage.class::cast)
        .findFirst()
        .orElseThrow()
        .fullVolts()
        .get()
        .value();
  }

  private static Feed feed(Bench bench, Kind kind) {
    return VoltageFigures.of(bench).stream()
        .filter(Feed.class::isInstance)
        .map(Feed.class::cast)
        .filter(feed -> feed.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static Bench benchWired(List<String> parts, String... wires) {
    StringBuilder plan = new StringBuilder("outshop_plan: 1\nparts:\n");
    parts.forEach(part -> plan.append("  ").append(part).append('\n'));
    plan.append("wiring:\n  pattern: by-wire\n  wires:\n");
    for (String wire : wires) {
      String[] ends = wire.split(" - ");
      plan.append(
          "    - {from: %s, to: %s, wire: %s, length: 50 mm}\n".formatted(ends[0], ends[1], WIRE));
    }
    return read(plan.toString());
  }

  private static Bench bench(String... parts) {
    StringBuilder plan = new StringBuilder("outshop_plan: 1\nparts:\n");
    for (String part : parts) {
      plan.append("  ").append(part).append('\n');
    }
    return read(plan.toString());
  }

  private static Bench read(String plan) {
    PlanReader.Read read =
        PlanReader.read("example", plan.getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    return Bench.of(read.plan(), read.problems());
  }
}
