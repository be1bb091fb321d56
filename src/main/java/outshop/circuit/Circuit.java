package outshop.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import outshop.units.Want;

/** The circuit of a plan. It does not change; what was once worked out from it is kept. */
public final class Circuit {
  private final List<Link> links;
  private final List<Device> devices;
  private final Map<String, List<String>> positions;
  private final boolean hasPlug;
  private final boolean hasVehicles;
  private final List<Want> unknowns;

  private final Map<Device.Sort, List<Device>> bySort = new EnumMap<>(Device.Sort.class);
  private final Map<String, Device> byName = new HashMap<>();
  private final Terminals terminals;
  private final Map<State, Web> webs = new ConcurrentHashMap<>();
  private final State running;
  private final State charging;

  /**
   * A circuit.
   *
   * @param links every conductor, in the order of the power path
   * @param devices every device, in the order of the power path
   * @param positions by switch, the positions it has, working position first
   * @param hasPlug whether a charging plug (or a charger on the pack taken out) is part of it
   * @param hasVehicles whether vehicles can be parted
   * @param unknowns what would have to be known to be sure of the links, such as which side a jack
   *     breaks
   */
  public Circuit(
      List<Link> links,
      List<Device> devices,
      Map<String, List<String>> positions,
      boolean hasPlug,
      boolean hasVehicles,
      List<Want> unknowns) {
    this.links = List.copyOf(links);
    this.devices = List.copyOf(devices);
    this.positions = new LinkedHashMap<>(positions);
    this.hasPlug = hasPlug;
    this.hasVehicles = hasVehicles;
    this.unknowns = List.copyOf(unknowns);
    for (Device device : this.devices) {
      bySort.computeIfAbsent(device.sort(), s -> new ArrayList<>()).add(device);
      byName.putIfAbsent(device.name(), device);
    }
    bySort.replaceAll((sort, ofSort) -> List.copyOf(ofSort));
    terminals = new Terminals(this.links);
    running = new State(false, workingPositions(), true, false);
    charging = new State(true, chargingPositions(), true, false);
  }

  public List<Link> links() {
    return links;
  }

  public List<Device> devices() {
    return devices;
  }

  public Map<String, List<String>> positions() {
    return Collections.unmodifiableMap(positions);
  }

  public boolean hasPlug() {
    return hasPlug;
  }

  public boolean hasVehicles() {
    return hasVehicles;
  }

  public List<Want> unknowns() {
    return unknowns;
  }

  public List<Device> devices(Device.Sort sort) {
    return bySort.getOrDefault(sort, List.of());
  }

  public Optional<Device> device(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** The device that a terminal belongs to; none for a terminal that stands for itself. */
  public Optional<Device> deviceAt(String terminal) {
    return terminal.indexOf('.') < 0 ? Optional.empty() : device(owner(terminal));
  }

  /**
   * The name of what a terminal belongs to: {@code fuse} for {@code fuse.a}; a terminal that stands
   * for itself is its own.
   */
  public static String owner(String terminal) {
    int point = terminal.indexOf('.');
    return point < 0 ? terminal : terminal.substring(0, point);
  }

  /** What conducts in a state. */
  Web web(State state) {
    Web known = webs.get(state);
    if (known == null) {
      known = new Web(terminals, links, state);
      webs.put(state, known);
    }
    return known;
  }

  /**
   * The state in which it runs: plug out, every switch at its working position, coupled, not on
   * live rails.
   */
  public State running() {
    return running;
  }

  /** The state in which it charges: plug in, and every switch where charging asks for it. */
  public State charging() {
    return charging;
  }

  private Map<String, String> chargingPositions() {
    Map<String, String> switches = workingPositions();
    positions.forEach(
        (name, positionsOf) -> {
          if (positionsOf.contains("charge")) {
            switches.put(name, "charge");
          }
        });
    return switches;
  }

  private Map<String, String> workingPositions() {
    Map<String, String> switches = new TreeMap<>();
    positions.forEach((name, positionsOf) -> switches.put(name, positionsOf.get(0)));
    return switches;
  }

  /** Every combination of plug, switches, vehicles and rails; the running state is the first. */
  public List<State> states() {
    List<State> states = new ArrayList<>();
    for (boolean rails : new boolean[] {false, true}) {
      for (boolean coupled : hasVehicles ? new boolean[] {true, false} : new boolean[] {true}) {
        for (boolean plugIn : hasPlug ? new boolean[] {false, true} : new boolean[] {false}) {
          for (Map<String, String> switches : switchCombinations()) {
            states.add(new State(plugIn, switches, coupled, rails));
          }
        }
      }
    }
    return states;
  }

  private List<Map<String, String>> switchCombinations() {
    List<Map<String, String>> combinations = new ArrayList<>();
    combinations.add(new TreeMap<>());
    positions.forEach(
        (name, positionsOf) -> {
          List<Map<String, String>> longer = new ArrayList<>();
          for (String position : positionsOf) {
            for (Map<String, String> before : combinations) {
              Map<String, String> more = new TreeMap<>(before);
              more.put(name, position);
              longer.add(more);
            }
          }
          combinations.clear();
          combinations.addAll(longer);
        });
    return combinations;
  }
}
