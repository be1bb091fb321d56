package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import outshop.catalogue.Kind;
import outshop.circuit.ChargingWay;
import outshop.circuit.Circuit;
import outshop.circuit.Joins;
import outshop.circuit.State;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Said;
import outshop.units.Want;

/**
 * The states of a circuit as charging sees them. Live rails join nothing, so states that differ in
 * them alone count once.
 *
 * @param pluggedIn coupled, with the plug in, for every position of the switches
 * @param pluggedOut with the plug out, coupled and parted
 * @param charger the terminals at which the charge comes in: the charger's own, or the jack's in a
 *     plan without a charger
 * @param unknown what leaves the joins open
 */
record PlugStates(
    List<Seen> pluggedIn,
    List<Seen> pluggedOut,
    List<Chain> chains,
    Optional<Ends> charger,
    List<Want> unknown) {

  /** A state and what is joined in it. */
  record Seen(State state, Joins joins) {
    /** The positions of the switches, in words; empty if there are none. */
    String positions() {
      List<String> words = new ArrayList<>();
      Map<String, String> switches = new TreeMap<>(state.switches());
      switches.forEach((name, position) -> words.add(name + " " + position));
      return String.join(", ", words);
    }

    /** Whether a pack's own poles are joined, so that no direction can be told. */
    boolean shorts(Chain chain) {
      return joins.joined(chain.ends().plus(), chain.ends().minus());
    }

    /** Whether two terminals that belong together meet the poles of some pack. */
    boolean meets(Ends ends, List<Chain> chains) {
      return chains.stream().anyMatch(chain -> ends.meet(joins, chain.ends()));
    }
  }

  static PlugStates of(Bench bench) {
    Circuit circuit = bench.circuit();
    List<Seen> in = new ArrayList<>();
    List<Seen> out = new ArrayList<>();
    for (State state : circuit.states()) {
      if (!state.onLiveRails() && (state.coupled() || !state.plugIn())) {
        (state.plugIn() ? in : out).add(new Seen(state, new Joins(circuit, state)));
      }
    }
    return new PlugStates(in, out, Chain.of(bench), chargerEnds(bench), unknown(bench));
  }

  private static Optional<Ends> chargerEnds(Bench bench) {
    Optional<Ends> own =
        bench.first(Kind.CHARGER).map(c -> new Ends(c.name() + ".plus", c.name() + ".minus"));
    return own.or(
        () ->
            ChargingWay.packTakenOut(bench.plan())
                ? Optional.empty()
                : bench.first(Kind.JACK).map(PlugStates::jackEnds));
  }

  static Ends jackEnds(Fitted jack) {
    return new Ends(jack.name() + ".pin", jack.name() + ".sleeve");
  }

  /**
   * What decides whether terminals are joined and was not said: the pattern itself, the side on
   * which the jack breaks where the pattern's wires follow it, what a switch does, whether a pack
   * can be unplugged. With the plug in, a break contact wired by hand is open on whichever side it
   * is.
   */
  private static List<Want> unknown(Bench bench) {
    Plan plan = bench.plan();
    Said pattern = plan.said("wiring.pattern");
    if (pattern.isUnsaid()) {
      return plan.wires().isEmpty() ? Standing.wants(pattern) : List.of();
    }
    List<Want> wants = new ArrayList<>();
    for (Want want : bench.circuit().unknowns()) {
      boolean side = want.what().equals("breaks") && pattern.is("break-contact-jack");
      if (side || want.what().equals("function") || want.what().equals("connector_half")) {
        wants.add(want);
      }
    }
    return wants;
  }
}
