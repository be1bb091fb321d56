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

/** Run times against a textbook and against sums made by hand. */
final class EnduranceFiguresTest {
  private static final String PACK =
      "{kind: pack, chemistry: li-ion, cells_series_count: 4, capacity_ah: %s}";

  /**
   * T. R. Kuphaldt, Lessons in Electric Circuits, vol. I (DC), 5th ed., chapter "Batteries and
   * power systems", battery ratings: 70 ampere-hours last 20 hours at 3.5 A, one hour at 70 A and
   * 70 000 hours at 1 mA, if they could be taken in full.
   */
  @ParameterizedTest
  @CsvSource({"3.5 A, 20", "70 A, 1", "1 mA, 70000"})
  void hoursAreAmpereHoursOverAmperes(String amps, double hours) {
    RunTime run =
        run(
            plan(
                PACK.formatted("70 Ah"),
                "measured: {average: " + amps + ", usable: 100 %}",
                "wishes: {running: 1 h}"));

    assertThat(run.hours().get().value()).isCloseTo(hours, within(1e-9 * hours));
  }

  /** 5.2 Ah at 1.04 A: 5 h in full; 80 % of it, and 70 to 90 %, where nobody states the share. */
  @Test
  void theUsableShareIsCarriedAsARange() {
    RunTime run = run(plan(PACK.formatted("5.2 Ah"), "measured: {average: 1.04 A}"));

    Amount.Known hours = run.hours().get();
    assertThat(hours.value()).isCloseTo(4.0, within(1e-9));
    assertThat(hours.low()).isCloseTo(3.5, within(1e-9));
    assertThat(hours.high()).isCloseTo(4.5, within(1e-9));
    assertThat(run.range()).isEqualTo(" (3.5 h to 4.5 h)");
    assertThat(run.coldHours().get().value()).isCloseTo(3.2, within(1e-9));
    assertThat(run.askedHours().isMissing()).isTrue();
  }

  /**
   * The base plan by hand: standing 0.1 + 0.06 + 0.06 A for 20 % of the time, cruising 0.6 A more
   * for 70 %, slipping 1.4 A more for 10 %: 0.044 + 0.574 + 0.162 A.
   */
  @Test
  void theMeanCurrentIsThatOfTheDuty() throws IOException {
    Bench bench = read(Files.readString(Path.of("rules/base-plan.yaml")));

    assertThat(run(bench).meanAmps().get().value()).isCloseTo(0.78, within(1e-3));
    assertThat(run(bench).hours().get().value()).isCloseTo(5.2 * 0.8 / 0.78, within(0.01));
  }

  @Test
  void aShareThatIsLeftOutIsWhatTheOthersLeave() throws IOException {
    String text = Files.readString(Path.of("rules/base-plan.yaml"));
    String duty = "duty: {standing: 20 %, cruising: 70 %, slipping: 10 %}";
    assertThat(text).contains(duty);

    Bench bench = read(text.replace(duty, "duty: {standing: 20 %, slipping: 10 %}"));
    Bench tooMuch = read(text.replace(duty, "duty: {standing: 60 %, slipping: 50 %}"));

    assertThat(run(bench).meanAmps().get().value()).isCloseTo(0.78, within(1e-3));
    assertThat(run(tooMuch).meanAmps().isMissing()).isTrue();
  }

  /** Two packs side by side last twice as long; in series, as long as the smaller alone. */
  @ParameterizedTest
  @CsvSource({
    "pack.plus - pack-b.plus, pack.minus - pack-b.minus, 8",
    "pack.minus - pack-b.plus, pack.plus - fuse.a, 3",
  })
  void packsTogetherCountByHowTheyAreJoined(String one, String other, double hours) {
    String text =
        """
        parts:
          pack: %s
          pack-b: %s
          fuse: {kind: fuse}
        measured: {average: 1 A, usable: 100 %%}
        wiring:
          pattern: by-wire
          wires:
            - {from: %s, to: %s, wire: {kind: wire, awg: 20 AWG}, length: 50 mm}
            - {from: %s, to: %s, wire: {kind: wire, awg: 20 AWG}, length: 50 mm}
        """
            .formatted(
                PACK.formatted("5 Ah"),
                PACK.formatted("3 Ah"),
                one.split(" - ")[0],
                one.split(" - ")[1],
                other.split(" - ")[0],
                other.split(" - ")[1]);

    assertThat(run(read("outshop_plan: 1\n" + text)).hours().get().value())
        .isCloseTo(hours, within(1e-9));
  }

  /**
   * Two packs side by side of which one stands higher: what it drives through the other is no load.
   * By hand the receiver's 0.1 A is all that is used, whatever runs between the packs.
   */
  @Test
  void whatRunsBetweenPacksIsNotCountedAsUsed() {
    String pack =
        "{kind: pack, chemistry: li-ion, cells_series_count: 4, strings_parallel_count: 1, "
            + "cell_milliohms: 50 mohm, protection: no, nominal_volts: %s, capacity_ah: 2 Ah}";
    String text =
        """
        wishes: {duty: {standing: 100 %%, cruising: 0 %%, slipping: 0 %%}}
        parts:
          pack: %s
          pack-b: %s
          receiver: {kind: receiver, own_milliamps: 100 mA, drop_volts: 0.1 V, path_milliohms: 50 mohm}
        wiring:
          pattern: by-wire
          wires:
            - {from: pack.plus, to: pack-b.plus, wire: {kind: wire, awg: 20 AWG}, length: 50 mm}
            - {from: pack.minus, to: pack-b.minus, wire: {kind: wire, awg: 20 AWG}, length: 50 mm}
            - {from: pack.plus, to: receiver.in+, wire: {kind: wire, awg: 20 AWG}, length: 50 mm}
            - {from: pack.minus, to: receiver.in-, wire: {kind: wire, awg: 20 AWG}, length: 50 mm}
        """
            .formatted(pack.formatted("14.8 V"), pack.formatted("14.4 V"));

    RunTime run = run(read("outshop_plan: 1\n" + text));

    assertThat(run.meanAmps().get().value()).isCloseTo(0.1, within(1e-6));
  }

  /** 5.2 Ah, electronics 100 mA and a pack that draws 0.02 mA itself: 52 h, less a little. */
  @Test
  void leftOnItLastsByItsStandbyCurrent() throws IOException {
    String text = Files.readString(Path.of("rules/base-plan.yaml"));
    String cutoff = "    cutoff_volts: 12 V\n    internal_fuse_amps";
    assertThat(text).contains(cutoff);

    LeftOn left =
        leftOn(read(text.replace(cutoff, "    cutoff_volts: none\n    internal_fuse_amps")));

    assertThat(left.days().get().value()).isCloseTo(5.2 / 0.10002 / 24, within(1e-9));
    assertThat(left.standing().word()).isEqualTo("drained");
    assertThat(leftOn(read(text)).standing().word()).isEqualTo("fine");
  }

  /** Packs in series are let go by either; side by side each must let go by itself. */
  @ParameterizedTest
  @CsvSource({
    "pack.minus - pack-b.plus, 12 V, none, fine",
    "pack.minus - pack-b.plus, none, none, drained",
    "pack.plus - pack-b.plus, 12 V, none, drained",
    "pack.plus - pack-b.plus, 12 V, 12 V, fine",
  })
  void everyWayToThePacksMustBeCutOff(String wire, String one, String other, String word) {
    String text =
        """
        parts:
          pack: {kind: pack, capacity_ah: 5 Ah, cutoff_volts: %s}
          pack-b: {kind: pack, capacity_ah: 5 Ah, cutoff_volts: %s}
        measured: {electronics: 0.1 A}
        wiring:
          pattern: by-wire
          wires:
            - {from: %s, to: %s, wire: {kind: wire, awg: 20 AWG}, length: 50 mm}
        """
            .formatted(one, other, wire.split(" - ")[0], wire.split(" - ")[1]);

    assertThat(leftOn(read("outshop_plan: 1\n" + text)).standing().word()).isEqualTo(word);
  }

  @Test
  void withoutAPackThereIsNothingToSay() {
    assertThat(EnduranceFigures.of(read("outshop_plan: 1\nparts:\n  receiver: {kind: receiver}\n")))
        .isEmpty();
  }

  private static Bench plan(String pack, String... sections) {
    return read(
        "outshop_plan: 1\nparts:\n  pack: " + pack + "\n" + String.join("\n", sections) + "\n");
  }

  private static Bench read(String text) {
    PlanReader.Read read =
        PlanReader.read("example", text.getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    return Bench.of(read.plan(), read.problems());
  }

  private static RunTime run(Bench bench) {
    return of(bench, RunTime.class);
  }

  private static LeftOn leftOn(Bench bench) {
    return of(bench, LeftOn.class);
  }

  private static <T> T of(Bench bench, Class<T> fact) {
    List<T> facts =
        EnduranceFigures.of(bench).stream().filter(fact::isInstance).map(fact::cast).toList();
    assertThat(facts).hasSize(1);
    return facts.get(0);
  }
}
