package outshop.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * Which terminals are joined in one state, through closed contacts, wires and fuses, and by which
 * way.
 */
public final class Joins {
  private final Web web;
  private final Terminals terminals;

  public Joins(Circuit circuit, State state) {
    web = circuit.web(state);
    terminals = web.terminals;
  }

  /** The links that conduct in this state. */
  public List<Link> closed() {
    return web.closed;
  }

  public boolean joined(String one, String other) {
    if (one.equals(other)) {
      return true;
    }
    int a = terminals.number(one);
    int b = terminals.number(other);
    return a != Terminals.NONE && b != Terminals.NONE && web.together(a, b);
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
    return joined(from, to)
        ? way(terminals.number(from), terminals.number(to), without)
        : Optional.empty();
  }

  private Optional<List<Link>> way(int from, int to, Set<Link.Sort> without) {
    int[] reachedFrom = new int[terminals.count()];
    Arrays.fill(reachedFrom, Terminals.NONE);
    Link[] reachedBy = new Link[reachedFrom.length];
    int[] open = new int[reachedFrom.length];
    open[0] = from;
    for (int head = 0, tail = 1; head < tail; head++) {
      int at = open[head];
      for (int joint = web.firstJoint(at); joint < web.endOfJoints(at); joint++) {
        int next = web.other(joint);
        if (next == from
            || reachedBy[next] != null
            || (!without.isEmpty() && without.contains(web.link(joint).sort()))) {
          continue;
        }
        reachedBy[next] = web.link(joint);
        reachedFrom[next] = at;
        if (next == to) {
          return Optional.of(walkBack(from, to, reachedBy, reachedFrom));
        }
        open[tail++] = next;
      }
    }
    return Optional.empty();
  }

  private static List<Link> walkBack(int from, int to, Link[] reachedBy, int[] reachedFrom) {
    List<Link> way = new ArrayList<>();
    for (int at = to; at != from; at = reachedFrom[at]) {
      way.add(reachedBy[at]);
    }
    Collections.reverse(way);
    return way;
  }

  /** Every link that current from a terminal can enter without passing a fuse. */
  public Set<Link> reachedWithoutFuse(String from) {
    Set<Link> reached = new LinkedHashSet<>();
    spread(from, l -> l.sort() != Link.Sort.FUSE, new int[terminals.count()], reached::add);
    return reached;
  }

  /** Every terminal joined to this one, itself included. */
  public Set<String> component(String from) {
    return component(from, link -> true);
  }

  /** As {@link #component(String)}, along the links that will do. */
  public Set<String> component(String from, Predicate<Link> through) {
    Set<String> names = new LinkedHashSet<>();
    names.add(from);
    int[] order = new int[terminals.count()];
    int count = spread(from, through, order, link -> {});
    for (int i = 1; i < count; i++) {
      names.add(terminals.name(order[i]));
    }
    return names;
  }

  /**
   * Goes out from a terminal in all directions.
   *
   * @param order is filled with the terminals as they are reached
   * @param passed gets every link that is entered
   * @return how many terminals are reached
   */
  private int spread(String from, Predicate<Link> through, int[] order, Consumer<Link> passed) {
    int start = terminals.number(from);
    if (start == Terminals.NONE) {
      return 0;
    }
    boolean[] seen = new boolean[order.length];
    seen[start] = true;
    order[0] = start;
    int count = 1;
    for (int head = 0; head < count; head++) {
      int at = order[head];
      for (int joint = web.firstJoint(at); joint < web.endOfJoints(at); joint++) {
        Link link = web.link(joint);
        if (!through.test(link)) {
          continue;
        }
        passed.accept(link);
        int next = web.other(joint);
        if (!seen[next]) {
          seen[next] = true;
          order[count++] = next;
        }
      }
    }
    return count;
  }
}
