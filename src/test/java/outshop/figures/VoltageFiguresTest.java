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

/** Volts at the parts, in circuits that can be reckoned by hand. */
final class VoltageFiguresTest {
  private static final String WIRE = "{kind: wire, awg: 20 AWG}";

  @Test
  void filamentVoltsAndCurrentAreEachOthersInverse() {
    double current = FilamentLaws.share(0.73, FilamentLaws.CURRENT);

    assertThat(FilamentLaws.voltsShare(current)).isCloseTo(0.73, within(1e-12));
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
