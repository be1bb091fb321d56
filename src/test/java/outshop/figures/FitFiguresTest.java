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
import outshop.input.Problem;
import outshop.plan.PlanReader;
import outshop.units.Amount;
import outshop.units.Want;

/** Boxes into bays and heat in bays, against sums made by hand. */
final class FitFiguresTest {

  /**
   * The electronics of the base plan in a closed cab of 60 x 60 x 40 mm, wheels slipping, pack
   * full. By hand: the receiver passes 1.4 + 0.06 + 0.06 A: 0.2 V x 1.52 A + 0.06 ohm x (1.52 A)^2
   * = 0.4426 W; it draws 0.1 A at 16.8 V - 1.62 A x 0.182 ohm = 16.505 V: 1.6505 W; the decoder's
   * bridge 1.0 V x 1.52 A and a milliohm: 1.5223 W; its path 0.12 ohm x (1.4 A)^2 = 0.2352 W; the
   * lamp's output 0.3 V x 0.06 A = 0.018 W; the sound, in amplifier and speaker together, 0.06 A x
   * 15.205 V = 0.9123 W. In all 4.781 W; surface 2 x (3600 + 2400 + 2400) mm2 = 0.0168 m2.
   */
  @Test
  void theLossesOfABayAreThoseOfItsParts() throws IOException {
    BayHeat heat = only(base("60 mm, width: 60 mm, height: 40 mm, closed: yes"), BayHeat.class);

    assertThat(heat.at().name()).isEqualTo("cab");
    assertThat(heat.watts().get().value()).isCloseTo(4.781, within(0.001));
    assertThat(heat.riseKelvin().get().value()).isCloseTo(4.781 / (8 * 0.0168), within(0.01));
    assertThat(heat.riseKelvin().get().low()).isCloseTo(4.781 / (10 * 0.0168), within(0.01));
    assertThat(heat.riseKelvin().get().high()).isEqualTo(heat.riseKelvin().get().value());
  }

  /**
   * A heater of 1 A behind a regulator of 5 V, on a pack that stands at 16.8 V when full and has
   * next to no resistance. Linear: (16.8 - 5) V x 1 A. Switching at 90 %: 5 V x 1 A / 0.9 x 0.1.
   */
  @ParameterizedTest
  @CsvSource({"linear, none, 11.8", "switching, 90 %, 0.5556"})
  void aRegulatorLosesWhatItDoesNotPassOn(String style, String efficiency, double watts) {
    Bench bench =
        plan(
            """
            locomotive:
              bays:
                box: {length: 100 mm, width: 100 mm, height: 100 mm, closed: yes}
            parts:
              pack: {kind: pack, chemistry: li-ion, cells_series_count: 4, strings_parallel_count: 1, cell_milliohms: 0.1 mohm, protection: no}
              reg: {kind: regulator, style: %s, output_volts: 5 V, efficiency_percent: %s, bay: box}
              heater: {kind: smoke-heater, rated_volts: 5 V, rated_amps: 1 A}
            wiring:
              pattern: by-wire
              wires:
                - {from: pack.plus, to: reg.in+, wire: {kind: wire, awg: 16 AWG}, length: 1 mm}
                - {from: reg.in-, to: pack.minus, wire: {kind: wire, awg: 16 AWG}, length: 1 mm}
                - {from: reg.out+, to: heater.a, wire: {kind: wire, awg: 16 AWG}, length: 1 mm}
                - {from: heater.b, to: reg.out-, wire: {kind: wire, awg: 16 AWG}, length: 1 mm}
            """
                .formatted(style, efficiency));

    assertThat(only(bench, BayHeat.class).watts().get().value()).isCloseTo(watts, within(0.01));
  }

  /** 144 x 44 x 44 mm for a pack of 140 x 40 x 40 mm with 2 mm all round, and not a hair less. */
  @ParameterizedTest
  @CsvSource({"144 mm, fine", "143.999 mm, one-part", "14.4 cm, fine"})
  void aPartWithItsClearanceMayFillItsBay(String length, String word) {
    Bench bench =
        plan(
            """
            locomotive:
              bays:
                tank: {length: %s, width: 44 mm, height: 44 mm, closed: no}
            parts:
              pack: {kind: pack, length_mm: 140 mm, width_mm: 40 mm, height_mm: 40 mm, bay: tank}
            """
                .formatted(length));

    assertThat(only(bench, BayFit.class).standing().word()).isEqualTo(word);
  }

  @Test
  void whereEachPartLiesIsTheWorking() throws IOException {
    BayFit fit =
        of(base("110 mm, width: 80 mm, height: 90 mm, closed: no"), BayFit.class).stream()
            .filter(f -> f.at().name().equals("cab"))
            .findFirst()
            .orElseThrow();

    assertThat(fit.placed().get().value()).isEqualTo(3);
    assertThat(fit.placed().get().from())
        .extracting(Amount.Known::label)
        .containsExactly(
            "receiver from the end of cab",
            "decoder from the end of cab",
            "speaker from the end of cab");
    assertThat(fit.placed().get().from().get(2).how())
        .isEqualTo(
            "lying 52 x 52 x 28 mm along, across and up; 2 mm from the side and 2 mm from the floor");
  }

  /** More parts in one bay than are searched: not "fine", and not "does not fit" either. */
  @Test
  void whatTheSearchDoesNotSettleCannotBeTold() {
    StringBuilder text =
        new StringBuilder(
            "locomotive:\n  bays:\n    hall: {length: 1 m, width: 400 mm, height: 400 mm, closed: no}\nparts:\n");
    for (int i = 1; i <= 31; i++) {
      text.append(
          "  speaker-%d: {kind: speaker, length_mm: 40 mm, width_mm: 40 mm, height_mm: 20 mm, bay: hall}\n"
              .formatted(i));
    }

    BayFit fit = only(plan(text.toString()), BayFit.class);

    assertThat(fit.standing().word()).isEqualTo("unknown");
    assertThat(fit.standing().wants())
        .extracting(Want::name)
        .containsExactly("hall: an arrangement");
  }

  /** Two parts without a bay, each with room for it in one bay only, are given one each. */
  @Test
  void partsWithoutABayAreSharedOutAmongTheBays() {
    Bench bench =
        plan(
            """
            locomotive:
              bays:
                large: {length: 100 mm, width: 50 mm, height: 50 mm, closed: no}
                small: {length: 50 mm, width: 50 mm, height: 50 mm, closed: no}
            parts:
              decoder: {kind: decoder, length_mm: 40 mm, width_mm: 40 mm, height_mm: 40 mm}
              speaker: {kind: speaker, length_mm: 90 mm, width_mm: 40 mm, height_mm: 40 mm}
            """);

    assertThat(of(bench, PartWithoutBay.class))
        .extracting(p -> p.at().name() + " " + p.standing().word() + " " + p.bay())
        .containsExactly("decoder room small", "speaker room large");
  }

  private static Bench base(String cab) throws IOException {
    String text = Files.readString(Path.of("rules/base-plan.yaml"));
    String before = "cab: {length: 110 mm, width: 80 mm, height: 90 mm, closed: no";
    assertThat(text).contains(before);
    return read(text.replace(before, "cab: {length: " + cab));
  }

  private static Bench plan(String text) {
    return read("outshop_plan: 1\n" + text);
  }

  private static Bench read(String text) {
    PlanReader.Read read =
        PlanReader.read("example", text.getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    return Bench.of(read.plan(), read.problems());
  }

  private static <T> T only(Bench bench, Class<T> fact) {
    List<T> facts = of(bench, fact);
    assertThat(facts).hasSize(1);
    return facts.get(0);
  }

  private static <T> List<T> of(Bench bench, Class<T> fact) {
    return FitFigures.of(bench).stream().filter(fact::isInstance).map(fact::cast).toList();
  }
}
