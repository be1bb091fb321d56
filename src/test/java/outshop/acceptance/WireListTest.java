package outshop.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import outshop.circuit.Circuit;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.Link;
import outshop.drawing.LeadColour;
import outshop.drawing.WireList;
import outshop.plan.Plan;

final class WireListTest {
  private static WireList demo(String name) {
    return of(Sample.plan(Path.of("catalog-sample", "plans", name + ".yaml")));
  }

  private static WireList written(String yaml) {
    return of(Sample.plan("test", yaml.getBytes(StandardCharsets.UTF_8), Sample.catalogue()));
  }

  private static WireList of(Plan plan) {
    return WireList.of(CircuitBuilder.build(plan));
  }

  private static WireList.Row at(WireList wires, String from, String to) {
    return wires.rows().stream()
        .filter(r -> r.from().equals(from) && r.to().equals(to))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no wire " + from + " - " + to));
  }

  @Test
  void everyWireOfTheCircuitHasARowInItsOrder() {
    for (Path path : Sample.plans()) {
      Plan plan = Sample.plan(path);
      Circuit circuit = CircuitBuilder.build(plan);
      List<String> wires =
          circuit.links().stream().filter(l -> l.sort() == Link.Sort.WIRE).map(Link::name).toList();
      WireList list = WireList.of(circuit);
      assertThat(list.rows().stream().map(WireList.Row::link)).isEqualTo(wires);
      for (int i = 0; i < wires.size(); i++) {
        assertThat(list.rows().get(i).number()).isEqualTo(i + 1);
      }
    }
  }

  /**
   * Colours of leads: NMRA RP-9.1.1 and NEM 652 (2017); red and black of the pack common practice.
   */
  @Test
  void leadsHaveTheColoursOfTheStandard() {
    WireList railcar = demo("brackenlow-railcar");
    assertThat(at(railcar, "pack.plus", "pack-plug.1a").colour()).isEqualTo(LeadColour.PACK_PLUS);
    assertThat(at(railcar, "jack.break", "receiver.in-").colour().word()).isEqualTo("black");
    assertThat(at(railcar, "receiver.out-a", "decoder.in-a").colour().word()).isEqualTo("red");
    assertThat(at(railcar, "receiver.out-b", "decoder.in-b").colour().word()).isEqualTo("black");
    assertThat(at(railcar, "decoder.motor+", "motor-rear.plus").colour().word())
        .isEqualTo("orange");
    assertThat(at(railcar, "decoder.motor-", "motor-rear.minus").colour().word()).isEqualTo("grey");
    assertThat(at(railcar, "decoder.common", "headlight.anode").colour().word()).isEqualTo("blue");
    assertThat(at(railcar, "decoder.out-1", "r-head.b").colour().word()).isEqualTo("white");
    assertThat(at(railcar, "decoder.out-2", "r-tail.b").colour().word()).isEqualTo("yellow");
  }

  @Test
  void aLeadKeepsItsColourBehindAResistorAndThroughACable() {
    assertThat(at(demo("brackenlow-railcar"), "r-head.a", "headlight.cathode").colour())
        .isEqualTo(LeadColour.OUTPUT_1);
    assertThat(at(demo("thistlewick-tender"), "tender-cable.1b", "motor.plus").colour())
        .isEqualTo(LeadColour.MOTOR_PLUS);
  }

  @Test
  void wiresOfTheChargingSideAreColouredByTheChargingState() {
    WireList tender = demo("thistlewick-tender");
    assertThat(at(tender, "switch.charge", "jack.pin").colour()).isEqualTo(LeadColour.PACK_PLUS);
    assertThat(at(tender, "switch.charge2", "jack.sleeve").colour())
        .isEqualTo(LeadColour.PACK_MINUS);
  }

  @Test
  void wherePlusAndMinusMeetNoColourIsRight() {
    WireList.Row row =
        at(
            written(
                """
                outshop_plan: 1
                title: short
                parts: {pack: pack-4s2p-li}
                wiring:
                  pattern: by-wire
                  wires:
                    - {from: pack.plus, to: pack.minus, wire: wire-20-red, length: 50 mm}
                """),
            "pack.plus",
            "pack.minus");
    assertThat(row.colour()).isEqualTo(LeadColour.UNNAMED);
    assertThat(row.remarks())
        .contains("joined to the pack's plus and minus alike: no colour is right");
  }

  @Test
  void gaugeAndLengthAreGivenOnlyWhereSomebodyStatedThem() {
    WireList tank = demo("sallowmere-tank");
    WireList.Row fuse = at(tank, "fuse.b", "jack.pin");
    assertThat(fuse.gaugeWords()).isEqualTo("20 AWG");
    assertThat(fuse.lengthWords()).isEqualTo("120 mm");
    WireList.Row joint = at(tank, "receiver.out-a", "decoder.in-a");
    assertThat(joint.lengthMm()).isEmpty();
    assertThat(joint.lengthWords()).isEqualTo("not stated");
    assertThat(joint.remarks()).contains("short lead or joint");
    WireList bare =
        written(
            """
            outshop_plan: 1
            title: bare
            parts: {pack: pack-4s2p-li, fuse: fuse-blade-4, receiver: receiver-dcc-18v-5a}
            wiring: {pattern: pack-taken-out}
            """);
    WireList.Row unsaid = at(bare, "fuse.b", "receiver.in+");
    assertThat(unsaid.gaugeWords()).isEqualTo("not stated");
    assertThat(unsaid.lengthWords()).isEqualTo("not stated");
  }

  @Test
  void aWireOfAnotherColourIsToBeMarked() {
    WireList.Row minus = at(demo("sallowmere-tank"), "jack.break", "receiver.in-");
    assertThat(minus.chosenColour()).contains("red");
    assertThat(minus.remarks()).contains("the wire chosen is red: mark both ends black");
    WireList.Row plus = at(demo("sallowmere-tank"), "fuse.b", "jack.pin");
    assertThat(plus.remarks()).isEmpty();
  }

  @Test
  void aSharedLengthSaysThatItIsAPart() {
    WireList.Row half = at(demo("sallowmere-tank"), "pack.plus", "pack-plug.1a");
    assertThat(half.lengthWords()).isEqualTo("35 mm");
    assertThat(half.remarks()).contains("a part of the length the plan states for the whole lead");
  }
}
