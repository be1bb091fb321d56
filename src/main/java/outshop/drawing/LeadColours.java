package outshop.drawing;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;

/**
 * Which colour belongs to each terminal: that of the lead it is joined to while the locomotive
 * runs, or else while it charges.
 */
final class LeadColours {
  private final Circuit circuit;
  private final Joins running;
  private final Joins charging;
  private final Map<String, LeadColour> byTerminal = new HashMap<>();
  private final Set<String> bothPoles = new HashSet<>();

  private LeadColours(Circuit circuit) {
    this.circuit = circuit;
    this.running = new Joins(circuit, circuit.running());
    this.charging = new Joins(circuit, circuit.charging());
  }

  static LeadColours of(Circuit circuit) {
    LeadColours colours = new LeadColours(circuit);
    colours.poles(Device.Sort.PACK, colours.running);
    for (Device decoder : circuit.devices(Device.Sort.DECODER)) {
      colours.decoder(decoder);
    }
    for (Device receiver : circuit.devices(Device.Sort.RECEIVER)) {
      boolean drivesMotors = circuit.devices(Device.Sort.DECODER).isEmpty();
      colours.fill(
          receiver.terminal("out-a"),
          drivesMotors ? LeadColour.MOTOR_PLUS : LeadColour.TRACK_RIGHT);
      colours.fill(
          receiver.terminal("out-b"),
          drivesMotors ? LeadColour.MOTOR_MINUS : LeadColour.TRACK_LEFT);
    }
    colours.fill("right-rail", LeadColour.TRACK_RIGHT);
    colours.fill("left-rail", LeadColour.TRACK_LEFT);
    for (Device motor : circuit.devices(Device.Sort.MOTOR)) {
      colours.fill(motor.terminal("plus"), LeadColour.MOTOR_PLUS);
      colours.fill(motor.terminal("minus"), LeadColour.MOTOR_MINUS);
    }
    colours.poles(Device.Sort.PACK, colours.charging);
    colours.poles(Device.Sort.CHARGER, colours.charging);
    colours.throughResistors();
    return colours;
  }

  /** The colour of the lead at a terminal. */
  LeadColour at(String terminal) {
    return byTerminal.getOrDefault(terminal, LeadColour.UNNAMED);
  }

  /**
   * Whether a terminal is joined to a pack's plus and to its minus alike, so no colour is right.
   */
  boolean meetsBothPoles(String terminal) {
    return bothPoles.contains(terminal);
  }

  private void poles(Device.Sort sort, Joins joins) {
    Set<String> plus = new LinkedHashSet<>();
    Set<String> minus = new LinkedHashSet<>();
    for (Device source : circuit.devices(sort)) {
      plus.addAll(joins.component(source.terminal("plus")));
      minus.addAll(joins.component(source.terminal("minus")));
    }
    for (String terminal : plus) {
      if (minus.contains(terminal)) {
        bothPoles.add(terminal);
        byTerminal.putIfAbsent(terminal, LeadColour.UNNAMED);
      } else {
        byTerminal.putIfAbsent(terminal, LeadColour.PACK_PLUS);
      }
    }
    minus.forEach(terminal -> byTerminal.putIfAbsent(terminal, LeadColour.PACK_MINUS));
  }

  private void decoder(Device decoder) {
    fill(decoder.terminal("motor+"), LeadColour.MOTOR_PLUS);
    fill(decoder.terminal("motor-"), LeadColour.MOTOR_MINUS);
    boolean minus = decoder.part().map(p -> p.said("common").is("minus")).orElse(false);
    fill(decoder.terminal("common"), minus ? LeadColour.UNNAMED : LeadColour.LAMP_COMMON);
    fill(decoder.terminal("out-1"), LeadColour.OUTPUT_1);
    fill(decoder.terminal("out-2"), LeadColour.OUTPUT_2);
    fill(decoder.terminal("out-3"), LeadColour.OUTPUT_3);
    fill(decoder.terminal("out-4"), LeadColour.OUTPUT_4);
    fill(decoder.terminal("in-a"), LeadColour.TRACK_RIGHT);
    fill(decoder.terminal("in-b"), LeadColour.TRACK_LEFT);
  }

  private void fill(String seed, LeadColour colour) {
    for (String terminal : running.component(seed)) {
      byTerminal.putIfAbsent(terminal, colour);
    }
  }

  /** A resistor in a lamp's lead does not change the lead. */
  private void throughResistors() {
    for (Device resistor : circuit.devices(Device.Sort.RESISTOR)) {
      String a = resistor.terminal("a");
      String b = resistor.terminal("b");
      if (byTerminal.containsKey(a)) {
        fill(b, byTerminal.get(a));
      } else if (byTerminal.containsKey(b)) {
        fill(a, byTerminal.get(b));
      }
    }
  }
}
