package outshop.circuit.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class SpiceNetlistTest {
  @Test
  void writesAPackAWireAndALamp() {
    Network network =
        new Sketch()
            .source("Pack 4S", "pack plus", "pack minus", 14.4, 0.2)
            .resistor("wire", "pack plus", "lamp", 0.05)
            .drop("lamp", "lamp", "pack minus", 3.1, 120)
            .network();
    assertThat(SpiceNetlist.of("Cab lamp,\nfull pack", network).text())
        .isEqualTo(
            """
            Cab lamp, full pack
            * node n0: pack plus
            * node 0: pack minus
            * node n2: lamp
            * Pack 4S
            Vpack_4s n0 pack_4s__emf DC 14.4
            Rpack_4s pack_4s__emf 0 0.2
            * wire
            Vwire n0 wire__in DC 0
            Rwire wire__in n2 0.05
            * lamp
            Vlamp n2 lamp__in DC 0
            Blamp lamp__in 0 I=max(((v(n2)-0)-3.1)/120.0,(v(n2)-0)*1.0E-9)
            .options reltol=1e-9 abstol=1e-15 vntol=1e-12 itl1=2000
            .control
            op
            set numdgt=12
            let amps_pack_4s = i(vpack_4s)
            print amps_pack_4s
            let volts_pack_4s = (v(n0)-0)
            print volts_pack_4s
            let amps_wire = i(vwire)
            print amps_wire
            let volts_wire = (v(n0)-v(n2))
            print volts_wire
            let amps_lamp = i(vlamp)
            print amps_lamp
            let volts_lamp = (v(n2)-0)
            print volts_lamp
            quit 0
            .endc
            .end
            """);
  }

  @Test
  void namesAreDifferentWhateverTheElementsAreCalled() {
    List<String> names =
        List.of("Lamp", "lamp", "lamp 2", "lamp-2", "LAMP", "++", "--", "x", "lamp__in", "lamp in");
    Sketch sketch = new Sketch().source("pack", "plus", "0", 3, 1);
    names.forEach(name -> sketch.resistor(name, "plus", "0", 10));
    SpiceNetlist netlist = SpiceNetlist.of("names", sketch.network());
    Set<String> printed = new HashSet<>();
    for (String name : names) {
      assertThat(netlist.ampsName(name)).matches("amps_[a-z0-9]+(_[a-z0-9]+)*");
      assertThat(netlist.voltsName(name)).matches("volts_[a-z0-9]+(_[a-z0-9]+)*");
      printed.add(netlist.ampsName(name));
      printed.add(netlist.voltsName(name));
    }
    assertThat(printed).hasSize(2 * names.size());
    List<String> devices =
        netlist
            .text()
            .lines()
            .filter(line -> line.matches("[VRB].*"))
            .map(SpiceNetlistTest::first)
            .toList();
    assertThat(devices).doesNotHaveDuplicates().hasSize(2 * names.size() + 2);
  }

  private static String first(String line) {
    return line.substring(0, line.indexOf(' '));
  }

  @Test
  void everyIslandHasANodeZero() {
    Network network =
        new Sketch()
            .source("pack", "plus", "minus", 12, 0.1)
            .source("tender", "tender plus", "tender minus", 7, 0.1)
            .resistor("left over", "x", "y", 3)
            .network();
    assertThat(SpiceNetlist.of("islands", network).text())
        .contains("* node 0: minus\n", "* node 0: tender minus\n", "* node 0: x\n");
  }

  @Test
  void anUnknownElementIsRefused() {
    SpiceNetlist netlist = SpiceNetlist.of("none", new Sketch().network());
    assertThatThrownBy(() -> netlist.ampsName("lamp"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("no element lamp");
  }
}
