package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.catalogue.Catalogue;
import outshop.input.Problem;
import outshop.plan.PlanReader;
import outshop.units.Amount;

/** Charging figures against values from outside, and where the rules' examples do not reach. */
final class ChargingFiguresTest {
  private static final String HEAD = "outshop_plan: 1\nparts:\n";

  /**
   * Watt-hours are nominal volts times rated ampere-hours: UN Manual of Tests and Criteria,
   * 38.3.2.3. The first pair of inputs is that of a letter of the US pipeline and hazardous
   * materials administration (14-0218); the products are plain arithmetic.
   */
  @ParameterizedTest
  @CsvSource({"7.4, 1.1, 8.14", "14.8, 6.8, 100.64", "22.2, 4.5, 99.9"})
  void energyIsNominalVoltsTimesCapacity(double volts, double ampereHours, double wattHours) {
    Bench bench =
        bench(
            """
              pack: {kind: pack, chemistry: li-ion, nominal_volts: %s V, capacity_ah: %s Ah}
            """
                .formatted(volts, ampereHours));

    PackEnergy energy = only(PackEnergy.class, bench);

    assertThat(energy.wattHours().get().value()).isCloseTo(wattHours, within(1e-9));
  }

  /** Charging practice for lithium-ion cells with cobalt: 4.20 V, +/- 50 mV a cell. */
  @ParameterizedTest
  @CsvSource({"1, 4.20, 4.25", "4, 16.8, 17.0", "6, 25.2, 25.5"})
  void lithiumCellsTakeFiftyMillivoltsMoreEach(int cells, double full, double most) {
    ChargerVolts volts =
        only(
            ChargerVolts.class,
            bench(
                """
                  pack: {kind: pack, chemistry: li-ion, cells_series_count: %d}
                  charger: {kind: charger, type: charger}
                """
                    .formatted(cells)));

    assertThat(volts.packVolts().get().value()).isCloseTo(full, within(1e-9));
    assertThat(volts.mostVolts().get().value()).isCloseTo(most, within(1e-9));
  }

  /**
   * T. R. Kuphaldt, Lessons in Electric Circuits, vol. I, 5th ed., on d.c. networks: 28 V behind 4
   * ohm and 7 V behind 1 ohm side by side stand at 11.2 V without a load (the Thevenin voltage), so
   * (28 - 11.2) / 4 A flow between them.
   */
  @Test
  void packsSideBySideDriveTheDifferenceOfTheirVoltsThroughTheirResistances() {
    PackPair pair =
        only(
            PackPair.class,
            bench(
                """
                  pack: {kind: pack, chemistry: li-ion, cells_series_count: 1, strings_parallel_count: 1, full_volts: 28 V, empty_volts: 20 V, cell_milliohms: 4000 mohm, protection: no, internal_fuse_amps: none}
                  pack-b: {kind: pack, chemistry: li-ion, cells_series_count: 1, strings_parallel_count: 1, full_volts: 7 V, empty_volts: 3 V, cell_milliohms: 1000 mohm, protection: no, internal_fuse_amps: none}
                  receiver: {kind: receiver}
                wiring: {pattern: pack-taken-out}
                """));

    assertThat(pair.alwaysAmps().get().value()).isCloseTo((28 - 11.2) / 4, within(1e-9));
    assertThat(pair.unequalAmps().get().value()).isCloseTo((28 - 3) / 5.0, within(1e-9));
  }

  /**
   * Kuphaldt, vol. I, on batteries: 70 Ah at 7 A last 10 h; a charge at that current is longer by
   * what tails off (lithium) or is lost (nickel).
   */
  @ParameterizedTest
  @CsvSource({"li-ion, 12", "nimh, 14.285714285714286", "lead-acid, 14.285714285714286"})
  void aChargeTakesLongerThanCapacityOverCurrent(String chemistry, double hours) {
    ChargeTime time =
        only(
            ChargeTime.class,
            bench(
                """
                  pack: {kind: pack, chemistry: %s, capacity_ah: 70 Ah}
                  charger: {kind: charger, type: charger, charge_amps: 7 A}
                """
                    .formatted(chemistry)));

    assertThat(time.hours().get().value()).isCloseTo(hours, within(1e-9));
    assertThat(time.mostHours().get().value()).isEqualTo(12);
  }

  @Test
  void aPackWithoutAnyDataWantsItsValuesAndIsNeverTakenAsZero() {
    Bench bench =
        bench(
            """
              pack: {kind: pack}
              charger: {kind: charger}
            """);

    assertThat(only(ChargerVolts.class, bench).mostVolts().isMissing()).isTrue();
    assertThat(only(ChargeCurrent.class, bench).usualAmps().isMissing()).isTrue();
    assertThat(only(ChargeTime.class, bench).hours().isMissing()).isTrue();
    assertThat(only(PackEnergy.class, bench).wattHours().isMissing()).isTrue();
    assertThat(only(PackBalance.class, bench).standing().wants()).isNotEmpty();
    assertThat(only(PackOnCharge.class, bench).standing().wants()).isNotEmpty();
  }

  @Test
  void aFuseInBothLeadsOfOnePackIsNoFuseOfTheOther() {
    String packs =
        """
          pack: {kind: pack, chemistry: li-ion, cells_series_count: 4, internal_fuse_amps: none}
          pack-b: {kind: pack, chemistry: li-ion, cells_series_count: 4, internal_fuse_amps: none}
          fuse-plus: {kind: fuse}
          fuse-minus: {kind: fuse}
          receiver: {kind: receiver}
        wiring:
          pattern: by-wire
          wires:
            - {from: pack.plus, to: fuse-plus.a}
            - {from: fuse-plus.b, to: receiver.in+}
            - {from: pack.minus, to: fuse-minus.a}
            - {from: fuse-minus.b, to: receiver.in-}
            - {from: pack-b.plus, to: receiver.in+}
            - {from: pack-b.minus, to: receiver.in-}
        """;

    assertThat(only(PackPair.class, bench(packs)).fused().word()).isEqualTo("unfused");
  }

  @Test
  void aSecondChargerIsComparedWithThePackToo() {
    Bench bench =
        bench(
            """
              pack: {kind: pack, chemistry: li-ion, cells_series_count: 4, max_charge_amps: 2 A}
              charger-a: {kind: charger, type: charger, charge_amps: 1 A}
              charger-b: {kind: charger, type: charger, charge_amps: 3 A}
            """);

    List<ChargeCurrent> currents = all(ChargeCurrent.class, bench);

    assertThat(currents).extracting(c -> c.at().name()).containsExactly("charger-a", "charger-b");
    assertThat(currents)
        .extracting(ChargeCurrent::amps)
        .extracting(amps -> amps.get().value())
        .containsExactly(1.0, 3.0);
  }

  @Test
  void packsInSeriesAreOneChainWithTheirVoltsAdded() {
    Bench bench =
        bench(
            """
              pack: {kind: pack, chemistry: li-ion, cells_series_count: 2}
              pack-b: {kind: pack, chemistry: li-ion, cells_series_count: 3}
            wiring:
              pattern: by-wire
              wires:
                - {from: pack-b.minus, to: pack.plus}
            """);

    List<Chain> chains = Chain.of(bench);

    assertThat(chains).extracting(Chain::name).containsExactly("pack-b + pack");
    assertThat(chains.get(0).chargeVolts(true).get().value()).isCloseTo(21, within(1e-9));
    assertThat(chains.get(0).cells().get().value()).isEqualTo(5);
    assertThat(chains.get(0).ends()).isEqualTo(new Ends("pack-b.plus", "pack.minus"));
  }

  @Test
  void aChargerOfThreeCellsSaysItsVoltsByItsCells() {
    ChargerVolts volts =
        only(
            ChargerVolts.class,
            bench(
                """
                  pack: {kind: pack, chemistry: li-ion, cells_series_count: 4}
                  charger: {kind: charger, type: charger, chemistry: li-ion, cells_count: 3}
                """));

    assertThat(volts.volts()).isInstanceOf(Amount.Known.class);
    assertThat(volts.volts().get().value()).isCloseTo(12.6, within(1e-9));
  }

  private static <T> T only(Class<T> type, Bench bench) {
    List<T> found = all(type, bench);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static <T> List<T> all(Class<T> type, Bench bench) {
    return ChargingFigures.of(bench).stream().filter(type::isInstance).map(type::cast).toList();
  }

  /** A bench of the parts (and what follows them) of a plan. */
  private static Bench bench(String parts) {
    byte[] bytes = (HEAD + parts.indent(0)).getBytes(StandardCharsets.UTF_8);
    PlanReader.Read read = PlanReader.read("test", bytes, new Catalogue(List.of()));
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    return Bench.of(read.plan(), read.problems());
  }
}
