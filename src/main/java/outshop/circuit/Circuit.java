package outshop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import outshop.units.Want;

/**
 * The circuit of a plan.
 *
 * @param links every conductor, in the order of the power path
 * @param devices every device, in the order of the power path
 * @param positions by switch, the positions it has, working position first
 * @param hasPlug whether a charging plug (or a charger on the pack taken out) is part of it
 * @param hasVehicles whether vehicles can be parted
 * @param unknowns what would have to be known to be sure of the links, such as which side a jack
 *     breaks
 */
public record Circuit(
    List<Link> links,
    List<Device> devices,
    Map<String, List<String>> positions,
    boolean hasPlug,
    boolean hasVehicles,
    List<Want> unknowns) {

  public Circuit {
    links = List.copyOf(links);
    devices = List.copyOf(devices);
    positions = new LinkedHashMap<>(positions);
    unknowns = List.copyOf(unknowns);
  }

  public List<Device> devices(Device.Sort sort) {
    List<Device> found = new ArrayList<>();
    for (Device device : devices) {
      if (device.sort() == sort) {
        found.add(device);
      }
    }
    return found;
  }

  public Optional<Device> device(String name) {
    for (Device device : devices) {
      if (device.name().equals(name)) {
        return Optional.of(device);
      }
    }
    return Optional.empty();
  }

  /**
   * The state in which it runs: plug out, every switch at its working position, coupled, not on
   * live rails.
   */
  public State running() {
    return new State(false, workingPositions(), true, false);
  }

  /** The state in which it charges: plug in, and every switch where charging asks for it. */
  public State charging() {
    Map<String, String> switches = workingPositions();
    positions.forEach(
        (name, positionsOf) -> {
          if (positionsOf.contains("charge")) {
            switches.put(name, "charge");
          }
        });
    return new State(true, switches, true, false);
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
