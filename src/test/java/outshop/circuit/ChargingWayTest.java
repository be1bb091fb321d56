package outshop.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.input.Problem;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.plan.PlanReader;
import outshop.units.Want;

/** What is joined while the plug is in, and while it is out. */
final class ChargingWayTest {

  @Test
  void aPackThatIsTakenOutLeavesTheLoadAtItsOwnConnector() {
    Circuit circuit = CircuitBuilder.build(takenOut("sockets", ""));

    assertThat(joined(circuit, circuit.running(), "pack.plus", "receiver.in+")).isTrue();
    assertThat(joined(circuit, circuit.charging(), "pack.plus", "receiver.in+")).isFalse();
    assertThat(joined(circuit, circuit.charging(), "pack.minus", "receiver.in-")).isFalse();
    assertThat(joined(circuit, circuit.charging(), "pack.plus", "charger.plus")).isTrue();
    assertThat(joined(circuit, circuit.running(), "pack.plus", "charger.plus")).isFalse();
  }

  @Test
  void aPackThatIsTakenOutLeavesTheLoadAtTheConnectorInItsLead() {
    Circuit circuit = CircuitBuilder.build(takenOut("none", ", pack_through: link"));

    assertThat(joined(circuit, circuit.running(), "pack.plus", "receiver.in+")).isTrue();
    assertThat(joined(circuit, circuit.charging(), "pack.plus", "receiver.in+")).isFalse();
    assertThat(joined(circuit, circuit.charging(), "pack.plus", "link.1a")).isTrue();
  }

  @Test
  void aPackThatIsSolderedInKeepsTheLoad() {
    Circuit circuit = CircuitBuilder.build(takenOut("none", ""));

    assertThat(joined(circuit, circuit.charging(), "pack.plus", "receiver.in+")).isTrue();
  }

  @Test
  void whetherAPackCanBeUnpluggedIsWantedWhereNobodySaid() {
    Plan plan =
        plan(
            """
            parts:
              pack: {kind: pack}
              charger: {kind: charger}
            wiring: {pattern: pack-taken-out}
            """);

    assertThat(CircuitBuilder.build(plan).unknowns())
        .extracting(Want::name)
        .containsExactly("pack: connector_half");
  }

  @Test
  void aJackIsNoWayInForAPackThatIsTakenOut() {
    Circuit circuit =
        CircuitBuilder.build(
            plan(
                """
                parts:
                  pack: {kind: pack, connector_half: pins}
                  charger: {kind: charger, plug_centre: plus}
                  jack: {kind: jack, breaks: none}
                wiring: {pattern: pack-taken-out}
                """));

    assertThat(joined(circuit, circuit.charging(), "charger.plus", "jack.pin")).isFalse();
    assertThat(joined(circuit, circuit.charging(), "charger.plus", "pack.plus")).isTrue();
  }

  @Test
  void theLeadsOfAChargerWiredByHandComeAndGoWithItsPlug() {
    Circuit circuit =
        CircuitBuilder.build(
            plan(
                """
                parts:
                  pack: {kind: pack}
                  charger: {kind: charger, plug_centre: plus}
                  plug: {kind: plug, centre: as-wired}
                  jack: {kind: jack, breaks: none}
                wiring:
                  pattern: by-wire
                  wires:
                    - {from: charger.minus, to: plug.pin}
                    - {from: charger.plus, to: plug.sleeve}
                    - {from: pack.plus, to: jack.pin}
                    - {from: pack.minus, to: jack.sleeve}
                """));

    assertThat(joined(circuit, circuit.charging(), "charger.minus", "pack.plus")).isTrue();
    assertThat(joined(circuit, circuit.charging(), "charger.plus", "pack.plus")).isFalse();
    assertThat(joined(circuit, circuit.running(), "charger.minus", "pack.plus")).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "minus, plus, minus",
    "plus, minus, plus",
    "as-wired, minus, minus",
    "as-wired, plus, plus",
    "as-wired, none, nobody said"
  })
  void thePlugsOwnWordComesBeforeTheChargers(String plug, String charger, String centre) {
    Plan plan =
        plan(
            """
            parts:
              charger: {kind: charger, plug_centre: %s}
              plug: {kind: plug, centre: %s}
            """
                .formatted(charger, plug));
    Fitted fitted = plan.parts(Kind.CHARGER).get(0);

    assertThat(ChargingWay.plugCentre(fitted, plan.part("plug")).or("nobody said"))
        .isEqualTo(centre);
  }

  @Test
  void withoutAPlugTheChargersWordCounts() {
    Plan plan = plan("parts:\n  charger: {kind: charger, plug_centre: minus}\n");
    Fitted charger = plan.parts(Kind.CHARGER).get(0);

    assertThat(ChargingWay.plugCentre(charger, Optional.empty()).is("minus")).isTrue();
  }

  private static Plan takenOut(String half, String through) {
    return plan(
        """
        parts:
          pack: {kind: pack, connector_half: %s}
          charger: {kind: charger}
          link: {kind: connector, contacts_count: 2}
          fuse: {kind: fuse}
          receiver: {kind: receiver}
        wiring: {pattern: pack-taken-out%s}
        """
            .formatted(half, through));
  }

  private static boolean joined(Circuit circuit, State state, String one, String other) {
    return new Joins(circuit, state).joined(one, other);
  }

  private static Plan plan(String body) {
    byte[] bytes = ("outshop_plan: 1\n" + body).getBytes(StandardCharsets.UTF_8);
    PlanReader.Read read = PlanReader.read("test", bytes, new Catalogue(List.of()));
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    return read.plan();
  }
}
