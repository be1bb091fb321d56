package outshop.circuit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which terminals are joined in one state, through closed contacts, wires and fuses, and by which
 * way.
 */
public final class Joins {
  private final Map<String, List<Link>> byTerminal = new HashMap<>();
  private final List<Link> closed = new ArrayList<>();

  public Joins(Circuit circuit, State state) {
    for (Link link : circuit.links()) {
      if (link.closed().in(state)) {
        closed.add(link);
        byTerminal.computeIfAbsent(link.from(), t -> new ArrayList<>()).add(link);
        byTerminal.computeIfAbsent(link.to(), t -> new ArrayList<>()).add(link);
      }
    }
  }

  /** The links that conduct in this state. */
  public List<Link> closed() {
    return closed;
  }

  public boolean joined(String one, String other) {
    return way(one, other).isPresent();
  }

  /** The links of a shortest way between two terminals; an empty list if they are the same one. */
  public Optional<List<Link>> way(String from, String to) {
    return way(from, to, Set.of());
  }

  /** As {@link #way(String, String)}, without passing a link of the sorts named. */
  public Optional<List<Link>> way(String from, String to, Set<Link.Sort> without) {
    if (from.equals(to)) {
      return Optional.of(List.of());
    }
    Map<String, Link> reachedBy = new HashMap<>();
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String at = open.remove();
      for (Link link : byTerminal.getOrDefault(at, List.of())) {
        String next = link.from().equals(at) ? link.to() : link.from();
        if (without.contains(link.sort()) || next.equals(from) || reachedBy.containsKey(next)) {
          continue;
        }
        reachedBy.put(next, link);
        if (next.equals(to)) {
          return Optional.of(walkBack(from, to, reachedBy));
        }
        open.add(next);
      }
    }
    return Optional.empty();
  }

  private static List<Link> walkBack(String from, String to, Map<String, Link> reachedBy) {
    List<Link> way = new ArrayList<>();
    String at = to;
    while (!at.equals(from)) {
      Link link = reachedBy.get(at);
      way.add(link);
      at = link.from().equals(at) ? link.to() : link.from();
    }
    Collections.reverse(way);
    return way;
  }

  /** Every link that current from a terminal can enter without passing a fuse. */
  public Set<Link> reachedWithoutFuse(String from) {
    Set<Link> reached = new LinkedHashSet<>();
    Set<String> seen = new HashSet<>(Set.of(from));
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String at = open.remove();
      for (Link link : byTerminal.getOrDefault(at, List.of())) {
        if (link.sort() == Link.Sort.FUSE) {
          continue;
        }
        reached.add(link);
        String next = link.from().equals(at) ? link.to() : link.from();
        if (seen.add(next)) {
          open.add(next);
        }
      }
    }
    return reached;
  }

  /** Every terminal joined to this one, itself included. */
  public Set<String> component(String from) {
    Set<String> seen = new LinkedHashSet<>(Set.of(from));
    Deque<String> open = new ArrayDeque<>(List.of(from));
    while (!open.isEmpty()) {
      String at = open.remove();
      for (Link link : byTerminal.getOrDefault(at, List.of())) {
        String next = link.from().equals(at) ? link.to() : link.from();
        if (seen.add(next)) {
          open.add(next);
        }
      }
    }
    return seen;
  }
}
