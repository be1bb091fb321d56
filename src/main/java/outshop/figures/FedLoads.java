package outshop.figures;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;

/**
 * Which loads a pack can drive a current through in one state: those that lie on a way from its
 * plus to its minus that meets no node twice. So a load that is parted at one pole but finds its
 * way back through another load is found as well, and one that hangs on a single node is not.
 *
 * <p>Terminals that conductors join are one node; a device is an edge between any two of its nodes.
 * An edge lies on such a way just if it is in the same biconnected component as an edge drawn from
 * plus to minus (Hopcroft and Tarjan, Algorithm 447, Communications of the ACM 16, 1973; from
 * memory).
 */
final class FedLoads {
  private static final Set<Device.Sort> LOADS =
      Set.of(
          Device.Sort.RECEIVER,
          Device.Sort.DECODER,
          Device.Sort.REGULATOR,
          Device.Sort.MOTOR,
          Device.Sort.BULB,
          Device.Sort.LED,
          Device.Sort.SMOKE_HEATER,
          Device.Sort.RESISTOR,
          Device.Sort.SPEAKER);

  /** An edge from node to node; without a device, the one drawn from plus to minus. */
  private record Edge(int one, int other, Optional<Device> device) {
    int from(int node) {
      return node == one ? other : one;
    }
  }

  private final Map<String, Integer> nodes = new HashMap<>();
  private final List<Edge> edges = new ArrayList<>();
  private final Map<Integer, Integer> depth = new HashMap<>();
  private final Map<Integer, Integer> highest = new HashMap<>();
  private final Deque<Edge> open = new ArrayDeque<>();
  private final Set<Edge> fed = new LinkedHashSet<>();

  private FedLoads(Circuit circuit, Joins joins, Device pack) {
    Set<String> terminals = new LinkedHashSet<>();
    for (Link link : circuit.links()) {
      terminals.add(link.from());
      terminals.add(link.to());
    }
    for (String terminal : terminals) {
      if (!nodes.containsKey(terminal)) {
        int node = nodes.size();
        joins.component(terminal).forEach(t -> nodes.put(t, node));
      }
    }
    for (Device device : circuit.devices()) {
      boolean otherPack = device.sort() == Device.Sort.PACK && !device.equals(pack);
      if (otherPack || LOADS.contains(device.sort())) {
        between(device, terminals);
      }
    }
  }

  private void between(Device device, Set<String> terminals) {
    List<Integer> touched =
        terminals.stream()
            .filter(t -> Circuit.owner(t).equals(device.name()))
            .map(nodes::get)
            .distinct()
            .toList();
    for (int i = 0; i < touched.size(); i++) {
      for (int k = i + 1; k < touched.size(); k++) {
        edges.add(new Edge(touched.get(i), touched.get(k), Optional.of(device)));
      }
    }
  }

  /** The loads that any of the packs feeds, in the order of the power path. */
  static List<Device> of(Circuit circuit, Joins joins) {
    Set<Device> fed = new LinkedHashSet<>();
    for (Device pack : circuit.devices(Device.Sort.PACK)) {
      FedLoads search = new FedLoads(circuit, joins, pack);
      search.from(pack).forEach(e -> e.device().ifPresent(fed::add));
    }
    return circuit.devices().stream()
        .filter(d -> LOADS.contains(d.sort()) && fed.contains(d))
        .toList();
  }

  private Set<Edge> from(Device pack) {
    Integer plus = nodes.get(pack.terminal("plus"));
    Integer minus = nodes.get(pack.terminal("minus"));
    if (plus == null || minus == null || plus.equals(minus)) {
      return Set.of();
    }
    Edge drawn = new Edge(plus, minus, Optional.empty());
    edges.add(drawn);
    depth.put(plus, 0);
    highest.put(plus, 0);
    follow(plus, minus, drawn);
    return fed;
  }

  /** Follows an edge to a node not met before, and closes the component that ends with it. */
  private void follow(int parent, int node, Edge by) {
    open.push(by);
    depth.put(node, depth.get(parent) + 1);
    highest.put(node, depth.get(node));
    for (Edge edge : edges) {
      boolean here = (edge.one() == node || edge.other() == node) && !edge.equals(by);
      if (!here) {
        continue;
      }
      int next = edge.from(node);
      if (!depth.containsKey(next)) {
        follow(node, next, edge);
        highest.merge(node, highest.get(next), Math::min);
      } else if (depth.get(next) < depth.get(node)) {
        open.push(edge);
        highest.merge(node, depth.get(next), Math::min);
      }
    }
    if (highest.get(node) >= depth.get(parent)) {
      close(by);
    }
  }

  private void close(Edge last) {
    List<Edge> component = new ArrayList<>();
    Edge edge;
    do {
      edge = open.pop();
      component.add(edge);
    } while (!edge.equals(last));
    if (last.device().isEmpty()) {
      fed.addAll(component);
    }
  }
}
