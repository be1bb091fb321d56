package outshop.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Link;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.plan.Terminals;

/** The things whose terminals a circuit joins, one box each, in the order of the power path. */
final class Owners {
  private final Circuit circuit;
  private final Plan plan;
  private final Map<String, Owner> byName = new LinkedHashMap<>();
  private final Map<String, List<String>> wired = new HashMap<>();

  /**
   * One thing.
   *
   * @param terminals those to be drawn, by their full names, in the order of the part
   * @param unused the names of the others
   * @param inside the links between its own terminals that are drawn in its box
   */
  record Owner(
      String name,
      String title,
      Sign sign,
      List<String> terminals,
      List<String> unused,
      List<Link> inside) {}

  private Owners(Circuit circuit, Plan plan) {
    this.circuit = circuit;
    this.plan = plan;
  }

  static List<Owner> of(Circuit circuit, Plan plan) {
    Owners owners = new Owners(circuit, plan);
    for (Link link : circuit.links()) {
      owners.meets(link.from());
      owners.meets(link.to());
    }
    for (Device device : circuit.devices()) {
      owners.wired.computeIfAbsent(device.name(), d -> new ArrayList<>());
      owners.add(device.name());
    }
    for (Link link : circuit.links()) {
      owners.add(owner(link.from()));
      owners.add(owner(link.to()));
    }
    // Of things one above the other the first stands uppermost, and the charger belongs below.
    List<Owner> ordered = new ArrayList<>(owners.byName.values());
    ordered.sort(Comparator.comparing(o -> o.sign() == Sign.CHARGER));
    return ordered;
  }

  /** The thing a terminal belongs to; a joint or a plain terminal is one of its own. */
  static String owner(String terminal) {
    int point = terminal.lastIndexOf('.');
    return point < 0 || isSplice(terminal) ? terminal : terminal.substring(0, point);
  }

  /** Whether a link stays within one box. A wire never does, also where it ends at its own part. */
  static boolean isInside(Link link) {
    return link.sort() != Link.Sort.WIRE && owner(link.from()).equals(owner(link.to()));
  }

  private static boolean isSplice(String terminal) {
    return terminal.startsWith(Terminals.SPLICE + ".");
  }

  private void meets(String terminal) {
    List<String> of = wired.computeIfAbsent(owner(terminal), o -> new ArrayList<>());
    if (!of.contains(terminal)) {
      of.add(terminal);
    }
  }

  private void add(String name) {
    if (byName.containsKey(name)) {
      return;
    }
    Optional<Fitted> part = plan.part(name).filter(p -> !p.isMaterial());
    Sign sign = sign(name, part);
    List<String> terminals = new ArrayList<>();
    List<String> unused = new ArrayList<>();
    List<String> met = wired.getOrDefault(name, List.of());
    for (String terminal : Terminals.of(plan, name).orElse(List.of())) {
      String full = name + "." + terminal;
      boolean drawn = met.contains(full) || !isOneOfMany(sign, terminal);
      (drawn ? terminals : unused).add(drawn ? full : terminal);
    }
    met.stream().filter(t -> !terminals.contains(t)).forEach(terminals::add);
    List<Link> inside =
        circuit.links().stream().filter(l -> isInside(l) && owner(l.from()).equals(name)).toList();
    String title = part.map(p -> p.part().title()).orElse("");
    byName.put(name, new Owner(name, title, sign, terminals, unused, inside));
  }

  /** What a decoder has many of is drawn only where it is used. */
  private static boolean isOneOfMany(Sign sign, String terminal) {
    return sign == Sign.DECODER && !terminal.startsWith("in-") && !terminal.startsWith("motor");
  }

  private Sign sign(String name, Optional<Fitted> part) {
    Optional<Device> device = circuit.device(name);
    if (device.isPresent()) {
      return sign(device.get().sort());
    }
    if (part.isPresent()) {
      return sign(part.get());
    }
    if (isSplice(name)) {
      return Sign.SPLICE;
    }
    if (name.equals(Terminals.OLD_SPEAKER)) {
      return Sign.SPEAKER;
    }
    return name.endsWith("-rail") ? Sign.RAIL : Sign.METAL;
  }

  private static Sign sign(Device.Sort sort) {
    return switch (sort) {
      case PACK -> Sign.PACK;
      case CHARGER -> Sign.CHARGER;
      case RECEIVER -> Sign.RECEIVER;
      case DECODER -> Sign.DECODER;
      case REGULATOR -> Sign.REGULATOR;
      case CAPACITOR -> Sign.CAPACITOR;
      case MOTOR -> Sign.MOTOR;
      case BULB -> Sign.BULB;
      case LED -> Sign.LED;
      case SMOKE_HEATER -> Sign.HEATER;
      case RESISTOR -> Sign.RESISTOR;
      case SPEAKER -> Sign.SPEAKER;
    };
  }

  private static Sign sign(Fitted part) {
    return switch (part.kind()) {
      case FUSE -> Sign.FUSE;
      case SWITCH -> Sign.SWITCH;
      case JACK -> Sign.JACK;
      case PLUG -> Sign.PLUG;
      case CABLE -> Sign.CABLE;
      default -> Sign.CONNECTOR;
    };
  }
}
