package outshop.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.State;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.plan.Plan;

/** Follows the power through a circuit, from the pack outwards and from the charger to the line. */
final class PathFinder {
  private static final Set<Station> ENDS = Set.of(Station.MOTOR, Station.LIGHTS, Station.SOUND);
  private static final Set<Station> BESIDE =
      Set.of(Station.WIRING, Station.LOCOMOTIVE, Station.PLAN);
  private static final Set<Station> FEED = Set.of(Station.CHARGER, Station.JACK);

  private final Circuit circuit;
  private final Set<Station> wanted;
  private final Map<Station, List<PowerPath.Fitting>> fittings = new HashMap<>();
  private final Map<String, Station> stationOf = new HashMap<>();
  private final Map<State, Map<String, List<String>>> neighbours = new HashMap<>();

  private PathFinder(Plan plan, Circuit circuit, Collection<Station> judged) {
    this.circuit = circuit;
    this.wanted = new TreeSet<>(judged);
    for (Fitted part : plan.parts()) {
      if (!part.is(Kind.WIRE) && !part.is(Kind.SLEEVE)) {
        fitting(Places.station(part.kind()), part.name(), part.part().title());
      }
    }
    for (Device device : circuit.devices()) {
      if (device.part().isEmpty()) {
        fitting(Places.of(device).station(), device.name(), "");
      }
    }
    wanted.addAll(fittings.keySet());
  }

  /**
   * The path of a circuit.
   *
   * @param judged stations that must be there because something was judged there
   */
  static PowerPath of(Plan plan, Circuit circuit, Collection<Station> judged) {
    return new PathFinder(plan, circuit, judged).path();
  }

  private void fitting(Station station, String name, String title) {
    fittings
        .computeIfAbsent(station, s -> new ArrayList<>())
        .add(new PowerPath.Fitting(name, title));
    stationOf.put(name, station);
  }

  private PowerPath path() {
    List<Station> order = order();
    List<Station> line = line(order);
    List<PowerPath.Stop> ends = new ArrayList<>();
    List<PowerPath.Stop> beside = new ArrayList<>();
    List<Station> feed = new ArrayList<>();
    for (Station station : wanted) {
      if (ENDS.contains(station)) {
        ends.add(stop(station, order.contains(station)));
      } else if (BESIDE.contains(station)) {
        beside.add(stop(station, true));
      } else if (!line.contains(station)) {
        feed.add(station);
      }
    }
    Optional<Integer> joins = joins(feed, line);
    int usual = Math.max(0, line.indexOf(Station.PACK));
    return new PowerPath(
        line.stream().map(s -> stop(s, order.contains(s))).toList(),
        ends,
        feed.stream().map(s -> stop(s, joins.isPresent())).toList(),
        joins.orElse(usual),
        charges(),
        beside);
  }

  private PowerPath.Stop stop(Station station, boolean joined) {
    return new PowerPath.Stop(station, fittings.getOrDefault(station, List.of()), joined);
  }

  /** The stations that the pack's power reaches in the running state, nearest first. */
  private List<Station> order() {
    List<Station> plus = reached("plus");
    List<Station> minus = reached("minus");
    List<Station> order = new ArrayList<>(plus);
    for (int i = 0; i < minus.size(); i++) {
      if (!order.contains(minus.get(i))) {
        order.add(i == 0 ? 0 : order.indexOf(minus.get(i - 1)) + 1, minus.get(i));
      }
    }
    return order;
  }

  private List<Station> reached(String pole) {
    List<String> from = new ArrayList<>();
    for (Device pack : circuit.devices(Device.Sort.PACK)) {
      from.add(pack.terminal(pole));
    }
    return stations(distances(from, circuit.running()).keySet());
  }

  /**
   * Those of the line: what is reached and no load, then what stands apart, where it usually is.
   */
  private List<Station> line(List<Station> order) {
    List<Station> line = new ArrayList<>(order);
    line.removeAll(ENDS);
    line.removeAll(BESIDE);
    for (Station station : wanted) {
      boolean apart =
          !ENDS.contains(station) && !BESIDE.contains(station) && !FEED.contains(station);
      if (apart && !line.contains(station)) {
        int at = 0;
        while (at < line.size() && line.get(at).compareTo(station) < 0) {
          at++;
        }
        line.add(at, station);
      }
    }
    return line;
  }

  /** The line's station that is nearest to the feed while charging, by its number. */
  private Optional<Integer> joins(List<Station> feed, List<Station> line) {
    List<String> from = new ArrayList<>();
    for (Device charger : circuit.devices(Device.Sort.CHARGER)) {
      from.add(charger.terminal("plus"));
      from.add(charger.terminal("minus"));
    }
    for (Station station : stations(distances(from, circuit.charging()).keySet())) {
      if (!feed.contains(station) && line.contains(station)) {
        return Optional.of(line.indexOf(station));
      }
    }
    return Optional.empty();
  }

  private boolean charges() {
    List<Device> chargers = circuit.devices(Device.Sort.CHARGER);
    return chargers.isEmpty()
        || chargers.stream().anyMatch(c -> meetsPack(c, "plus") && meetsPack(c, "minus"));
  }

  /** Only through conductors: what passes electronics charges nothing. */
  private boolean meetsPack(Device charger, String pole) {
    Set<String> met = new Joins(circuit, circuit.charging()).component(charger.terminal(pole));
    return circuit.devices(Device.Sort.PACK).stream()
        .anyMatch(
            pack -> met.contains(pack.terminal("plus")) || met.contains(pack.terminal("minus")));
  }

  private List<Station> stations(Collection<String> terminals) {
    List<Station> stations = new ArrayList<>();
    for (String terminal : terminals) {
      Station station = stationOf.get(Circuit.owner(terminal));
      if (station != null && !stations.contains(station)) {
        stations.add(station);
      }
    }
    return stations;
  }

  /** Every terminal reached, nearest first; through electronics from their inputs on. */
  private Map<String, Integer> distances(List<String> from, State state) {
    Map<String, List<String>> next =
        neighbours.computeIfAbsent(state, asked -> neighbours(new Joins(circuit, asked).closed()));
    Map<String, Integer> distances = new LinkedHashMap<>();
    Deque<String> open = new ArrayDeque<>(from);
    from.forEach(terminal -> distances.put(terminal, 0));
    while (!open.isEmpty()) {
      String at = open.remove();
      List<String> onward = new ArrayList<>(next.getOrDefault(at, List.of()));
      onward.addAll(through(at, next.keySet()));
      for (String terminal : onward) {
        if (distances.putIfAbsent(terminal, distances.get(at) + 1) == null) {
          open.add(terminal);
        }
      }
    }
    return distances;
  }

  private static Map<String, List<String>> neighbours(List<Link> links) {
    Map<String, List<String>> next = new LinkedHashMap<>();
    for (Link link : links) {
      next.computeIfAbsent(link.from(), t -> new ArrayList<>()).add(link.to());
      next.computeIfAbsent(link.to(), t -> new ArrayList<>()).add(link.from());
    }
    return next;
  }

  /** From an input of the receiver, the decoder or a regulator to all its other terminals. */
  private List<String> through(String terminal, Collection<String> terminals) {
    String owner = Circuit.owner(terminal);
    if (!terminal.startsWith(".in", owner.length())) {
      return List.of();
    }
    boolean passes =
        circuit
            .device(owner)
            .map(Device::sort)
            .filter(
                sort ->
                    sort == Device.Sort.RECEIVER
                        || sort == Device.Sort.DECODER
                        || sort == Device.Sort.REGULATOR)
            .isPresent();
    String beginning = owner + ".";
    return passes ? terminals.stream().filter(t -> t.startsWith(beginning)).toList() : List.of();
  }
}
