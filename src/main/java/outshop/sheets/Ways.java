package outshop.sheets;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import outshop.circuit.Circuit;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.State;
import outshop.units.Amount;
import outshop.units.Unit;

/** What the bench sheet asks of the circuit's states: who is joined to whom, and by which way. */
final class Ways {
  private final Circuit circuit;
  private final boolean plugVaries;

  /**
   * For a circuit.
   *
   * @param plugVaries whether its plug can go in while the pack is out
   */
  Ways(Circuit circuit, boolean plugVaries) {
    this.circuit = circuit;
    this.plugVaries = plugVaries;
  }

  boolean joined(State state, String one, String other) {
    return new Joins(circuit, state).joined(one, other);
  }

  /**
   * The states worth trying for two terminals: plug out and in, and every position of the switches
   * that make a difference to them; the other switches at work.
   */
  List<State> states(String one, String other) {
    Set<String> telling = telling(one, other);
    List<State> states = new ArrayList<>();
    for (State state : all()) {
      boolean rest =
          circuit.positions().entrySet().stream()
              .filter(e -> !telling.contains(e.getKey()))
              .allMatch(e -> e.getValue().get(0).equals(state.switches().get(e.getKey())));
      if (rest) {
        states.add(state);
      }
    }
    return states;
  }

  private List<State> all() {
    return circuit.states().stream()
        .filter(s -> s.coupled() && !s.onLiveRails() && (plugVaries || !s.plugIn()))
        .toList();
  }

  /** The switches of which some position changes whether two terminals are joined. */
  Set<String> telling(String one, String other) {
    Set<String> telling = new HashSet<>();
    for (State state : all()) {
      boolean joined = joined(state, one, other);
      circuit
          .positions()
          .forEach(
              (name, positions) -> {
                for (String position : positions) {
                  Map<String, String> turned = new TreeMap<>(state.switches());
                  turned.put(name, position);
                  State then = new State(state.plugIn(), turned, true, false);
                  if (joined(then, one, other) != joined) {
                    telling.add(name);
                  }
                }
              });
    }
    return telling;
  }

  /** A short name for a state as far as it differs: {@code out-on}. */
  String slug(State state, Set<String> telling) {
    List<String> words = new ArrayList<>();
    if (plugVaries && circuit.hasPlug()) {
      words.add(state.plugIn() ? "in" : "out");
    }
    new TreeMap<>(state.switches())
        .forEach(
            (name, position) -> {
              if (telling.contains(name)) {
                words.add(position);
              }
            });
    return words.isEmpty() ? "" : "-" + String.join("-", words);
  }

  /** A state in words as far as it differs: {@code plug out, switch on}. */
  Line words(State state, Set<String> telling) {
    List<Line.Piece> pieces = new ArrayList<>();
    if (plugVaries && circuit.hasPlug()) {
      pieces.add(new Line.Words(state.plugIn() ? "plug in" : "plug out"));
    }
    new TreeMap<>(state.switches())
        .forEach(
            (name, position) -> {
              if (telling.contains(name)) {
                if (!pieces.isEmpty()) {
                  pieces.add(new Line.Words(", "));
                }
                pieces.add(new Line.Own(name));
                pieces.add(new Line.Words(" " + position));
              }
            });
    return new Line(pieces);
  }

  /** The resistance of a shortest way between two terminals; missing where a part of it is. */
  Optional<Amount> ohms(State state, String one, String other) {
    return new Joins(circuit, state)
        .way(one, other)
        .map(
            way ->
                Amount.sum(
                    "way from " + one + " to " + other,
                    Unit.OHMS,
                    way.stream().map(Link::ohms).toList()));
  }

  /** The parts and joints along a shortest way, in its order, each once. */
  List<String> along(State state, String one, String other) {
    List<String> names = new ArrayList<>();
    for (Link link : new Joins(circuit, state).way(one, other).orElse(List.of())) {
      for (String terminal : List.of(link.from(), link.to())) {
        String owner = Circuit.owner(terminal);
        if (!names.contains(owner)) {
          names.add(owner);
        }
      }
    }
    String first = Circuit.owner(one);
    names.remove(first);
    names.remove(Circuit.owner(other));
    return names;
  }

  /** The contact of a switch that lies in the way between two terminals. */
  Optional<Link> switchIn(State state, String one, String other) {
    return new Joins(circuit, state)
        .way(one, other).orElse(List.of()).stream()
            .filter(link -> link.sort() == Link.Sort.SWITCH)
            .findFirst();
  }
}
