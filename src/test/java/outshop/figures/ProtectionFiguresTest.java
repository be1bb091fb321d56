package outshop.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import outshop.catalogue.Catalogue;
import outshop.input.Problem;
import outshop.plan.PlanReader;
import outshop.units.Amount;

final class ProtectionFiguresTest {
  private static final String PARTS =
      """
      outshop_plan: 1
      parts:
        pack: {kind: pack, chemistry: li-ion, full_volts: %s, empty_volts: %s, cells_series_count: 2,
          strings_parallel_count: 1, cell_milliohms: %s, protection: no, cutoff_volts: 6 V}
        fuse: {kind: fuse, style: blade, gate: iso8820-blade, rated_amps: 4 A, cold_milliohms: 10 mohm,
          breaking_amps: 1000 A}
        switch: {kind: switch, function: on-off, poles_count: 1, dc_amps: 10 A, contact_milliohms: 10 mohm}
        jack: {kind: jack, breaks: sleeve, break_amps: 5 A, contact_amps: 5 A, contact_milliohms: 20 mohm}
        charger: {kind: charger, charge_volts: 8.4 V, charge_amps: 1 A, plug_centre: plus}
        receiver: {kind: receiver, cutoff_volts: none, stops_on_link_loss: yes}
      wiring:
        pattern: by-wire
        wire: {kind: wire, awg: 18 AWG}
        wires:
      """;

  /** A wire of the plan: two terminals and a length in millimetres. */
  private record Wire(String from, String to, int millimetres) {
    Wire turned() {
      return new Wire(to, from, millimetres);
    }
  }

  private static final List<Wire> AFTER_THE_JACK =
      List.of(
          new Wire("pack.plus", "jack.pin", 100),
          new Wire("jack.pin", "fuse.a", 60),
          new Wire("fuse.b", "switch.a", 100),
          new Wire("switch.b", "receiver.in+", 100),
          new Wire("pack.minus", "jack.sleeve", 100),
          new Wire("jack.break", "receiver.in-", 100));

  private static final List<Wire> RIGHT =
      List.of(
          new Wire("pack.plus", "fuse.a", 60),
          new Wire("fuse.b", "jack.pin", 100),
          new Wire("fuse.b", "switch.a", 100),
          new Wire("switch.b", "receiver.in+", 100),
          new Wire("pack.minus", "jack.sleeve", 100),
          new Wire("jack.break", "receiver.in-", 100));

  private static final List<Wire> ALWAYS_ON =
      List.of(
          new Wire("pack.plus", "fuse.a", 60),
          new Wire("fuse.b", "switch.a", 100),
          new Wire("switch.b", "jack.pin", 100),
          new Wire("fuse.b", "receiver.in+", 100),
          new Wire("pack.minus", "jack.sleeve", 100),
          new Wire("jack.break", "receiver.in-", 100));

  private static final List<Wire> SHORTED =
      List.of(
          new Wire("pack.plus", "fuse.a", 60),
          new Wire("fuse.b", "switch.a", 100),
          new Wire("switch.b", "jack.break", 100),
          new Wire("fuse.b", "receiver.in+", 100),
          new Wire("pack.minus", "jack.sleeve", 100),
          new Wire("jack.sleeve", "receiver.in-", 100));

  private static List<Object> facts(String full, String empty, String cell, List<Wire> wires) {
    StringBuilder text = new StringBuilder(PARTS.formatted(full, empty, cell));
    for (Wire w : wires) {
      text.append(
          "    - {from: %s, to: %s, length: %d mm}\n".formatted(w.from(), w.to(), w.millimetres()));
    }
    PlanReader.Read read =
        PlanReader.read(
            "plan", text.toString().getBytes(StandardCharsets.UTF_8), new Catalogue(List.of()));
    assertThat(read.problems()).filteredOn(p -> p.severity() == Problem.Severity.ERROR).isEmpty();
    return ProtectionFigures.of(Bench.of(read.plan(), read.problems()));
  }

  private static <T> T only(List<Object> facts, Class<T> kind) {
    List<T> found = facts.stream().filter(kind::isInstance).map(kind::cast).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  /**
   * 18 AWG has 6.385 ohm in 1000 ft (304.8 m): Floyd, Electric Circuit Fundamentals, 2nd ed., as
   * the handbook gives it. The feed of 3 wires out and 2 back, the fuse, the switch, the break
   * contact and the pack lie in series.
   */
  @Test
  void aShortAtTheReceiverIsLimitedByTheWireOfTheHandbook() {
    FuseFault fault = only(facts("8.4 V", "6 V", "50 mohm", RIGHT), FuseFault.class);

    double wire = 6.385 / 304.8 * (0.06 + 0.1 + 0.1 + 0.1 + 0.1);
    double expected = 6 / (2 * 0.05 + wire + 0.01 + 0.01 + 0.02);
    assertThat(fault.end()).isEqualTo("receiver");
    assertThat(fault.leastAmps().get().value()).isCloseTo(expected, within(expected * 3e-4));
  }

  @Test
  void theWeakestBehindTheFuseIsTheJack() {
    FuseBehind behind = only(facts("8.4 V", "6 V", "50 mohm", RIGHT), FuseBehind.class);

    assertThat(behind.weakestAmps().get().value()).isEqualTo(5);
    assertThat(behind.letsAmps()).isInstanceOf(Amount.Known.class);
  }

  @ParameterizedTest
  @CsvSource({
    "right, yes, yes, yes",
    "after the jack, no, yes, yes",
    "always on, yes, no, yes",
    "shorted, yes, no, no"
  })
  void theOrderAndDirectionOfTheWiresDecideNothing(
      String wiring, String guarded, String off, String parted) {
    List<Wire> wires =
        switch (wiring) {
          case "right" -> RIGHT;
          case "after the jack" -> AFTER_THE_JACK;
          case "always on" -> ALWAYS_ON;
          default -> SHORTED;
        };
    Random random = new Random(7);
    for (int i = 0; i < 12; i++) {
      List<Wire> shuffled = new ArrayList<>();
      wires.forEach(w -> shuffled.add(random.nextBoolean() ? w : w.turned()));
      Collections.shuffle(shuffled, random);
      List<Object> facts = facts("8.4 V", "6 V", "50 mohm", shuffled);

      assertThat(only(facts, PackFusing.class).guarded().or("?")).as(wiring).isEqualTo(guarded);
      assertThat(only(facts, SwitchedOff.class).left().isEmpty())
          .as(wiring)
          .isEqualTo(off.equals("yes"));
      PlusToMinus pack =
          facts.stream()
              .filter(PlusToMinus.class::isInstance)
              .map(PlusToMinus.class::cast)
              .filter(p -> p.at().name().equals("pack"))
              .findFirst()
              .orElseThrow();
      assertThat(pack.parted().or("?")).as(wiring).isEqualTo(parted);
    }
  }

  @Test
  void theFuseAfterTheJackLeavesOnlyThePacksOwnLeadUnnamed() {
    PackFusing fusing = only(facts("8.4 V", "6 V", "50 mohm", AFTER_THE_JACK), PackFusing.class);

    assertThat(fusing.conductors())
        .contains("wire jack.pin - fuse.a", "jack pin contact")
        .doesNotContain("pack.plus - jack.pin");
    assertThat(fusing.when()).isEqualTo("in every state");
  }

  @Test
  void thePackOfOneLeadIsJoinedThroughTheFuseOnly() {
    PackFusing fusing = only(facts("8.4 V", "6 V", "50 mohm", RIGHT), PackFusing.class);

    assertThat(fusing.guards()).isEqualTo("fuse");
    assertThat(fusing.conductors()).isEmpty();
  }
}
