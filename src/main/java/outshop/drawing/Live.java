package outshop.drawing;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.State;

/** What is live in one state: which poles each terminal is joined to. */
public final class Live {
  private final State state;
  private final Map<String, EnumSet<Pole>> byTerminal = new HashMap<>();

  private Live(State state) {
    this.state = state;
  }

  /** Follows wires, closed contacts and fuses from every pole. */
  public static Live of(Circuit circuit, State state) {
    Live live = new Live(state);
    Joins joins = new Joins(circuit, state);
    for (Device pack : circuit.devices(Device.Sort.PACK)) {
      live.mark(joins, pack.terminal("plus"), Pole.PACK_PLUS);
      live.mark(joins, pack.terminal("minus"), Pole.PACK_MINUS);
    }
    for (Device charger : circuit.devices(Device.Sort.CHARGER)) {
      live.mark(joins, charger.terminal("plus"), Pole.CHARGER_PLUS);
      live.mark(joins, charger.terminal("minus"), Pole.CHARGER_MINUS);
    }
    if (state.onLiveRails()) {
      live.mark(joins, "left-rail", Pole.RAILS);
      live.mark(joins, "right-rail", Pole.RAILS);
    }
    return live;
  }

  private void mark(Joins joins, String terminal, Pole pole) {
    for (String joined : joins.component(terminal)) {
      byTerminal.computeIfAbsent(joined, t -> EnumSet.noneOf(Pole.class)).add(pole);
    }
  }

  public State state() {
    return state;
  }

  /** The poles a terminal is joined to. */
  public Set<Pole> at(String terminal) {
    return byTerminal.getOrDefault(terminal, EnumSet.noneOf(Pole.class));
  }

  /** The poles a link carries: none while it does not conduct. */
  public Set<Pole> on(Link link) {
    return link.closed().in(state) ? at(link.from()) : EnumSet.noneOf(Pole.class);
  }
}
