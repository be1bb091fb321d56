package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import outshop.catalogue.Catalogue;
import outshop.input.Problem;
import outshop.plan.PlanReader;
import outshop.units.Amount;

/** Charging figures where the rules' examples do not reach. */
final class ChargingFiguresTest {
  private static final String HEAD = "outshop_plan: 1\nparts:\n";

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
