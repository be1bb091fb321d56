package outshop.figures;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Circuit;
import outshop.circuit.Device;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.State;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Want;

/**
 * Whether the rails meet anything on board. Followed through the circuit in every state: a pickup
 * on the frame is no fault by itself, a motor brush on the same frame makes it one.
 */
final class RailFigures {
  private static final List<String> RAILS = List.of("left-rail", "right-rail");

  /** What carries the pack's power or passes it on. */
  private static final Set<Device.Sort> POWER =
      EnumSet.of(
          Device.Sort.PACK,
          Device.Sort.CHARGER,
          Device.Sort.RECEIVER,
          Device.Sort.REGULATOR,
          Device.Sort.CAPACITOR);

  private static final Set<Device.Sort> DRIVE = EnumSet.of(Device.Sort.DECODER, Device.Sort.MOTOR);

  /** How many terminals a sentence names. */
  private static final int MOST_NAMED = 2;

  private final Bench bench;
  private final Plan plan;
  private final Circuit circuit;
  private final boolean kept;

  private RailFigures(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
    this.circuit = bench.circuit();
    this.kept = plan.said("locomotive.pickups.kept").is("yes");
  }

  static List<Object> of(Bench bench) {
    RailFigures figures = new RailFigures(bench);
    List<Object> facts = new ArrayList<>(List.of(figures.joint()));
    for (Fitted part : bench.plan().parts(Kind.SWITCH)) {
      figures.changeover(part).ifPresent(facts::add);
    }
    return facts;
  }

  /** What the rails meet in one state. */
  private record Met(State state, TreeSet<String> power, TreeSet<String> drive) {
    boolean nothing() {
      return power.isEmpty() && drive.isEmpty();
    }
  }

  private RailJoint joint() {
    At at = new At(Station.LOCOMOTIVE, "pickups", "the pickups");
    List<Met> all = new ArrayList<>();
    Set<String> reached = new LinkedHashSet<>();
    for (State state : circuit.states()) {
      if (!state.onLiveRails()) {
        all.add(met(state, reached));
      }
    }
    Optional<Met> worst =
        all.stream()
            .filter(m -> !m.power().isEmpty())
            .findFirst()
            .or(() -> all.stream().filter(m -> !m.nothing()).findFirst());
    if (worst.isEmpty()) {
      return new RailJoint(at, "", "", apart(reached));
    }
    boolean power = !worst.get().power().isEmpty();
    boolean always = all.stream().noneMatch(m -> power ? m.power().isEmpty() : m.nothing());
    return new RailJoint(
        at,
        words(power ? worst.get().power() : worst.get().drive()),
        always ? "in every state" : worst.get().state().words(),
        Standing.of(power ? "power" : "drive"));
  }

  private static String words(TreeSet<String> names) {
    List<String> first = names.stream().limit(MOST_NAMED).toList();
    int more = names.size() - first.size();
    return String.join(", ", first) + (more > 0 ? " and %d more".formatted(more) : "");
  }

  private Met met(State state, Set<String> reached) {
    Joins joins = new Joins(circuit, state);
    Set<String> joined = new LinkedHashSet<>();
    RAILS.forEach(rail -> joined.addAll(joins.component(rail)));
    reached.addAll(joined);
    Met met = new Met(state, new TreeSet<>(), new TreeSet<>());
    for (String terminal : joined) {
      Optional<Device> device = circuit.deviceAt(terminal);
      if (device.filter(d -> POWER.contains(d.sort())).isPresent()) {
        met.power().add(terminal);
      } else if (device
          .filter(d -> DRIVE.contains(d.sort()) && !fed(d, terminal, joins))
          .isPresent()) {
        met.drive().add(terminal);
      }
    }
    return met;
  }

  /**
   * Whether the rails rightly feed a decoder's input or a bare motor: the pickups are kept for
   * that, and nothing on board feeds it in this state.
   */
  private boolean fed(Device device, String terminal, Joins joins) {
    boolean decoder = device.sort() == Device.Sort.DECODER;
    List<String> inputs =
        decoder
            ? List.of(device.terminal("in-a"), device.terminal("in-b"))
            : List.of(device.terminal("plus"), device.terminal("minus"));
    if (!kept || !inputs.contains(terminal)) {
      return false;
    }
    for (String input : inputs) {
      for (String joined : joins.component(input)) {
        Optional<Device> owner = circuit.deviceAt(joined).filter(o -> !o.equals(device));
        if (owner.filter(o -> feeds(o, decoder)).isPresent()) {
          return false;
        }
      }
    }
    return true;
  }

  /** Decoders and motors may lie side by side on the rails; a decoder's motor lead is a feed. */
  private static boolean feeds(Device device, boolean decoder) {
    return POWER.contains(device.sort())
        || device.sort() == (decoder ? Device.Sort.MOTOR : Device.Sort.DECODER);
  }

  /** Nothing is joined as far as is known: is everything known that could join it? */
  private Standing apart(Set<String> reached) {
    List<Want> wants = new ArrayList<>();
    if (plan.list("locomotive.pickups.joined_to").isEmpty()) {
      wants.addAll(Standing.wants(plan.said("locomotive.pickups.joined_to")));
    }
    Said material = plan.said("locomotive.frame.material");
    boolean insulates = material.is("plastic") || material.is("wood");
    boolean unread = plan.list("locomotive.frame.joined_to").isEmpty();
    if (reached.contains("frame") && unread && !insulates) {
      wants.addAll(Standing.wants(plan.said("locomotive.frame.joined_to")));
    }
    for (Fitted part : plan.parts(Kind.SWITCH)) {
      Said function = part.said("function");
      if (reached.stream().anyMatch(t -> t.startsWith(part.name() + "."))) {
        wants.addAll(Standing.wants(function));
      }
    }
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }

  /** A changeover with a rail on one of its sides; nothing for any other switch. */
  private Optional<RailChangeover> changeover(Fitted part) {
    Said function = part.said("function");
    if (function.is("on-off")) {
      return Optional.empty();
    }
    Set<String> parted = partedRails(part);
    if (parted.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new RailChangeover(
            Places.of(part), String.join(", ", parted), standing(part, parted.size())));
  }

  /** The rails that reach a terminal of this switch by other ways than its own contacts. */
  private Set<String> partedRails(Fitted part) {
    Joins joins = new Joins(without(part), circuit.running());
    Set<String> parted = new TreeSet<>();
    for (String rail : RAILS) {
      if (joins.component(rail).stream().anyMatch(t -> t.startsWith(part.name() + "."))) {
        parted.add(rail);
      }
    }
    return parted;
  }

  private Circuit without(Fitted part) {
    List<Link> links =
        circuit.links().stream()
            .filter(l -> l.sort() != Link.Sort.SWITCH || l.part().filter(part::equals).isEmpty())
            .toList();
    return Circuits.of(circuit, links);
  }

  private static Standing standing(Fitted part, int rails) {
    Said transfer = part.said("transfer");
    if (transfer.is("make-before-break")) {
      return Standing.of("makes-first");
    }
    boolean onePole =
        rails < RAILS.size()
            || part.amount("poles_count") instanceof Amount.Known k && k.value() < RAILS.size();
    if (onePole) {
      return Standing.of("one-pole");
    }
    List<Want> wants = new ArrayList<>();
    wants.addAll(Standing.wants(part.said("function")));
    wants.addAll(Standing.wants(part.amount("poles_count")));
    if (!transfer.is("break-before-make")) {
      wants.add(
          new Want(
              part.name(),
              "transfer",
              "Data sheet: non-shorting is break-before-make, shorting is make-before-break."));
    }
    return wants.isEmpty() ? Standing.FINE : Standing.open(wants);
  }
}
