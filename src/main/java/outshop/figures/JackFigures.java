package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.circuit.Circuit;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.State;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Want;

/** What can be met at a charging jack from outside, and through its body. */
final class JackFigures {
  private static final Set<Link.Sort> FUSES = Set.of(Link.Sort.FUSE);

  /** How many of the frame's joints a sentence names. */
  private static final int MOST_NAMED = 2;

  private final Bench bench;
  private final Fitted jack;
  private final PlugStates states;

  private JackFigures(Bench bench, Fitted jack) {
    this.bench = bench;
    this.jack = jack;
    this.states = PlugStates.of(bench);
  }

  static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    if (bench.pack().isPresent()) {
      for (Fitted jack : bench.plan().parts(Kind.JACK)) {
        JackFigures figures = new JackFigures(bench, jack);
        facts.add(figures.contacts());
        facts.add(figures.body());
      }
    }
    return facts;
  }

  /** Where a pack stands across the contacts with the plug out. */
  private record Live(PlugStates.Seen seen, Chain chain) {}

  private JackContacts contacts() {
    List<Live> live = new ArrayList<>();
    for (PlugStates.Seen seen : states.pluggedOut()) {
      for (Chain chain : states.chains()) {
        if (PlugStates.jackEnds(jack).meet(seen.joins(), chain.ends())) {
          live.add(new Live(seen, chain));
        }
      }
    }
    String state = live.isEmpty() ? "" : live.get(0).seen().state().words();
    Amount volts = live.isEmpty() ? new Amount.Absent("volts") : live.get(0).chain().fullVolts();
    return new JackContacts(Places.of(jack), state, volts, contactsStanding(live));
  }

  private Standing contactsStanding(List<Live> live) {
    if (live.isEmpty()) {
      boolean open = bench.plan().said("wiring.pattern").isUnsaid() && !states.unknown().isEmpty();
      return open ? Standing.open(states.unknown()) : Standing.FINE;
    }
    Said reachable = bench.plan().said("parts." + jack.name() + ".reachable");
    Said recessed = jack.said("recessed");
    if (reachable.isUnsaid() && recessed.isUnsaid()) {
      return Standing.open(reachable, recessed);
    }
    boolean touched = reachable.isUnsaid() ? recessed.is("no") : reachable.is("yes");
    return touched ? behindFuse(live) : Standing.FINE;
  }

  /** A fuse in either lead, or inside the pack, opens when the contacts are bridged. */
  private Standing behindFuse(List<Live> live) {
    List<Want> wants = new ArrayList<>();
    for (Live one : live) {
      boolean inside = one.chain().packs().stream().anyMatch(JackFigures::fusedInside);
      if (!inside && bridgedWithoutFuse(one)) {
        Amount[] fuses =
            one.chain().packs().stream()
                .map(p -> p.amount("internal_fuse_amps"))
                .toArray(Amount[]::new);
        if (Standing.wants(fuses).isEmpty()) {
          return Standing.of("live");
        }
        wants.addAll(Standing.wants(fuses));
      }
    }
    return wants.isEmpty() ? Standing.of("live-behind-fuse") : Standing.open(wants);
  }

  private static boolean fusedInside(Fitted pack) {
    return pack.amount("internal_fuse_amps").isKnown();
  }

  private boolean bridgedWithoutFuse(Live live) {
    Joins joins = live.seen().joins();
    Ends pack = live.chain().ends();
    Ends contacts = PlugStates.jackEnds(jack);
    return (free(joins, pack.plus(), contacts.plus())
            && free(joins, pack.minus(), contacts.minus()))
        || (free(joins, pack.plus(), contacts.minus())
            && free(joins, pack.minus(), contacts.plus()));
  }

  private static boolean free(Joins joins, String from, String to) {
    return joins.way(from, to, FUSES).isPresent();
  }

  private JackBody body() {
    List<Link> onFrame = bench.circuit().links().stream().filter(this::joinsFrame).toList();
    if (onFrame.isEmpty()) {
      return new JackBody(Places.of(jack), "", clearOfFrame());
    }
    Circuit without = without(onFrame);
    TreeSet<String> meets = new TreeSet<>();
    boolean makesShort = false;
    for (State state : bench.circuit().states()) {
      Joins clear = new Joins(without, state);
      clear.closed().forEach(link -> across(link).ifPresent(meets::add));
      makesShort |= shorted(new Joins(bench.circuit(), state)) && !shorted(clear);
    }
    return new JackBody(Places.of(jack), words(meets), onFrame(makesShort, !meets.isEmpty()));
  }

  /** What a link joins to the frame. */
  private static Optional<String> across(Link link) {
    if (link.from().equals("frame")) {
      return Optional.of(link.to());
    }
    return link.to().equals("frame") ? Optional.of(link.from()) : Optional.empty();
  }

  private static String words(TreeSet<String> names) {
    List<String> first = names.stream().limit(MOST_NAMED).toList();
    int more = names.size() - first.size();
    return String.join(", ", first) + (more > 0 ? " and %d more".formatted(more) : "");
  }

  private boolean joinsFrame(Link link) {
    String contact = jack.name() + ".";
    return link.sort() == Link.Sort.BODY
        && ((link.from().equals("frame") && link.to().startsWith(contact))
            || (link.to().equals("frame") && link.from().startsWith(contact)));
  }

  private Standing clearOfFrame() {
    Said body = jack.said("body");
    Said touches = bench.plan().said("parts." + jack.name() + ".body_on_frame");
    boolean clear = body.is("plastic") || touches.is("no");
    return clear ? Standing.FINE : Standing.open(body, touches);
  }

  private Circuit without(List<Link> taken) {
    Circuit whole = bench.circuit();
    return new Circuit(
        whole.links().stream().filter(l -> !taken.contains(l)).toList(),
        whole.devices(),
        whole.positions(),
        whole.hasPlug(),
        whole.hasVehicles(),
        whole.unknowns());
  }

  private boolean shorted(Joins joins) {
    return states.chains().stream()
        .flatMap(chain -> chain.packs().stream())
        .anyMatch(p -> joins.joined(p.name() + ".plus", p.name() + ".minus"));
  }

  private Standing onFrame(boolean makesShort, boolean carries) {
    if (makesShort) {
      return Standing.of("short");
    }
    if (carries) {
      return Standing.of("carries");
    }
    Plan plan = bench.plan();
    Optional<List<String>> measured = plan.list("locomotive.frame.joined_to");
    Said material = plan.said("locomotive.frame.material");
    boolean insulates = material.is("plastic") || material.is("wood");
    return measured.isPresent() || insulates
        ? Standing.FINE
        : Standing.open(plan.said("locomotive.frame.joined_to"));
  }
}
