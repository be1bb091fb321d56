package outshop.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import outshop.circuit.solve.Network;
import outshop.circuit.solve.NoSolution;
import outshop.circuit.solve.Solution;
import outshop.circuit.solve.Solver;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * The load cases of a circuit, each solved when first asked for. A case whose load nobody measured
 * is missing, not zero. Where values were assumed, the case is solved at the ends of their ranges
 * as well, so that every figure carries the range they leave open.
 */
public final class Cases {
  private final Plan plan;
  private final Circuit circuit;
  private final Map<LoadCase, Solved> solved = new HashMap<>();
  private Optional<Solved> charging = Optional.empty();
  private final Map<Asked, Amount> answered = new HashMap<>();

  /** A figure that was asked for: many rules ask for the same. */
  private record Asked(String what, String when, String of, String against) {}

  /** One case: the solutions at nominal and at the ends, or what is missing. */
  private sealed interface Solved permits Answer, Unanswered {}

  private record Answer(
      CaseNetwork network,
      Solution nominal,
      List<Solution> ends,
      List<Amount.Known> inputs,
      Origin origin)
      implements Solved {}

  private record Unanswered(Amount.Missing missing) implements Solved {}

  private static final Solved SHORTED =
      new Unanswered(
          Amount.missing(
              "wiring",
              "a circuit without a short",
              "mend the short that is reported, then check again"));

  public Cases(Plan plan, Circuit circuit) {
    this.plan = plan;
    this.circuit = circuit;
  }

  /** Current through an element, in amps, as a size; 0 if the circuit has no such element. */
  public Amount amps(LoadCase loadCase, String element) {
    return answered(
        new Asked("amps", loadCase.words(), element, ""),
        asked ->
            figure(
                solve(loadCase),
                asked.when(),
                element + ", " + asked.when(),
                Unit.AMPS,
                (s, at) -> Math.abs(s.amps(at)),
                element));
  }

  private Amount answered(Asked asked, Function<Asked, Amount> answer) {
    Amount known = answered.get(asked);
    if (known == null) {
      known = answer.apply(asked);
      answered.put(asked, known);
    }
    return known;
  }

  /**
   * Current that packs give together, in amps, as a size: what one gives and another takes counts
   * out.
   */
  public Amount givenAmps(LoadCase loadCase, List<String> packs) {
    return figure(
        solve(loadCase),
        loadCase.words(),
        String.join(" and ", packs) + ", " + loadCase.words(),
        Unit.AMPS,
        (s, at) -> Math.abs(packs.stream().mapToDouble(s::amps).sum()),
        packs.get(0));
  }

  /** Volts between two terminals, the first against the second. */
  public Amount volts(LoadCase loadCase, String plus, String minus) {
    return answered(
        new Asked("volts", loadCase.words(), plus, minus),
        asked ->
            between(
                solve(loadCase),
                "volts at " + owner(plus) + ", " + asked.when(),
                asked.when(),
                plus,
                minus));
  }

  /** Volts lost along a link or across an element, as a size. */
  public Amount lostVolts(LoadCase loadCase, String element) {
    return figure(
        solve(loadCase),
        loadCase.words(),
        element + " loses, " + loadCase.words(),
        Unit.VOLTS,
        (s, at) -> Math.abs(s.volts(at)),
        element);
  }

  /** Heat in an element, in watts. */
  public Amount watts(LoadCase loadCase, String element) {
    return figure(
        solve(loadCase),
        loadCase.words(),
        element + ", " + loadCase.words(),
        Unit.WATTS,
        (s, at) -> Math.abs(s.watts(at)),
        element);
  }

  /** Current through an element while charging, in amps, as a size. */
  public Amount chargingAmps(String element) {
    return answered(
        new Asked("amps", "charging", element, ""),
        asked ->
            figure(
                charging(),
                "charging",
                element + ", charging",
                Unit.AMPS,
                (s, at) -> Math.abs(s.amps(at)),
                element));
  }

  /** Volts between two terminals while charging. */
  public Amount chargingVolts(String plus, String minus) {
    return between(charging(), "volts at " + owner(plus) + ", charging", "charging", plus, minus);
  }

  /**
   * The network of a case at its nominal values, for drawing up a netlist; empty if something is
   * missing.
   */
  public Optional<Network> network(LoadCase loadCase) {
    return solve(loadCase) instanceof Answer a
        ? Optional.of(a.network().nominal())
        : Optional.empty();
  }

  /** The network of the charging case at its nominal values; empty if something is missing. */
  public Optional<Network> chargingNetwork() {
    return charging() instanceof Answer a ? Optional.of(a.network().nominal()) : Optional.empty();
  }

  /** The nominal solution of a case; empty if something is missing. */
  public Optional<Solution> solution(LoadCase loadCase) {
    return solve(loadCase) instanceof Answer a ? Optional.of(a.nominal()) : Optional.empty();
  }

  /** What is missing to solve a case; nothing if it is solved. */
  public List<Want> wants(LoadCase loadCase) {
    return solve(loadCase) instanceof Unanswered u ? u.missing().wants() : List.of();
  }

  /**
   * The worse (greater) of an element's current cruising and slipping, over every charge of the
   * pack.
   */
  public Amount sustainedAmps(String element) {
    return worst(
        element,
        List.of(LoadCase.Drive.SLIPPING, LoadCase.Drive.CRUISING),
        List.of(LoadCase.Charge.values()));
  }

  /** The element's greatest current with the wheels blocked, over every charge of the pack. */
  public Amount blockedAmps(String element) {
    return worst(element, List.of(LoadCase.Drive.BLOCKED), List.of(LoadCase.Charge.values()));
  }

  /** Solves a trial on the bench. */
  public Run run(Trial trial) {
    return new Run(
        trial, shorted(trial.state()) ? SHORTED : answer(CaseNetwork.trial(plan, circuit, trial)));
  }

  /** A trial, solved, or what is missing to solve it. */
  public static final class Run {
    private final Trial trial;
    private final Solved solved;

    private Run(Trial trial, Solved solved) {
      this.trial = trial;
      this.solved = solved;
    }

    /** Current through an element, in amps, as a size; 0 if none can reach it. */
    public Amount amps(String element) {
      return figure(
          solved,
          trial.words(),
          element + ", " + trial.words(),
          Unit.AMPS,
          (s, at) -> Math.abs(s.amps(at)),
          element);
    }

    /** What the feed gives, in amps, as a size. */
    public Amount fed() {
      return amps(trial.feed().name());
    }

    /** Volts between two terminals, the first against the second. */
    public Amount volts(String plus, String minus) {
      String label = "volts at " + owner(plus) + ", " + trial.words();
      return between(solved, label, trial.words(), plus, minus);
    }

    /** The network at its nominal values; empty if something is missing. */
    public Optional<Network> network() {
      return solved instanceof Answer a ? Optional.of(a.network().nominal()) : Optional.empty();
    }
  }

  private Amount worst(String element, List<LoadCase.Drive> drives, List<LoadCase.Charge> charges) {
    List<Amount> all = new ArrayList<>();
    for (LoadCase.Drive drive : drives) {
      for (LoadCase.Charge charge : charges) {
        all.add(amps(new LoadCase(charge, drive), element));
      }
    }
    return greatest(all);
  }

  /**
   * The greatest of several amounts, with its own label and working; missing if any is missing.
   * What another's range leaves open stays open: the greatest may be any of them.
   */
  public static Amount greatest(List<Amount> all) {
    return extreme(all, true);
  }

  /** The least of several amounts; as {@link #greatest}. */
  public static Amount least(List<Amount> all) {
    return extreme(all, false);
  }

  private static Amount extreme(List<Amount> all, boolean greatest) {
    List<Want> wants = new ArrayList<>(0);
    List<Amount.Known> known = new ArrayList<>(all.size());
    for (Amount amount : all) {
      if (amount instanceof Amount.Missing m) {
        wants.addAll(m.wants());
      } else if (amount instanceof Amount.Known k) {
        known.add(k);
      }
    }
    if (!wants.isEmpty()) {
      return new Amount.Missing(wants);
    }
    return known.isEmpty() ? all.get(0) : extremeOf(known, greatest);
  }

  private static Amount.Known extremeOf(List<Amount.Known> all, boolean greatest) {
    Amount.Known best = all.get(0);
    for (Amount.Known k : all) {
      best = (greatest ? k.middle() > best.middle() : k.middle() < best.middle()) ? k : best;
    }
    double low = best.low();
    double high = best.high();
    for (Amount.Known k : all) {
      low = greatest ? Math.max(low, k.low()) : Math.min(low, k.low());
      high = greatest ? Math.max(high, k.high()) : Math.min(high, k.high());
    }
    return low == best.low() && high == best.high() ? best : widened(best, all, greatest);
  }

  /** The extreme one with the range that the others leave open, and what they stand on. */
  private static Amount.Known widened(Amount.Known best, List<Amount.Known> all, boolean greatest) {
    double low = best.low();
    double high = best.high();
    Origin origin = best.origin();
    Map<String, Amount.Known> from = new LinkedHashMap<>();
    inputs(best).forEach(i -> from.put(i.label(), i));
    for (Amount.Known k : all) {
      if (greatest ? k.high() > high : k.low() < low) {
        origin = origin.and(k.origin());
        inputs(k).forEach(i -> from.putIfAbsent(i.label(), i));
      }
      low = greatest ? Math.max(low, k.low()) : Math.min(low, k.low());
      high = greatest ? Math.max(high, k.high()) : Math.min(high, k.high());
    }
    return new Amount.Known(
        best.middle(),
        low,
        high,
        best.unit(),
        origin,
        best.label(),
        best.how(),
        List.copyOf(from.values()));
  }

  private static List<Amount.Known> inputs(Amount.Known amount) {
    return amount.from().isEmpty() ? List.of(amount) : amount.from();
  }

  /** What is to be read off a solution, of the element at a place. */
  private interface Read {
    double of(Solution solution, int place);
  }

  private static Amount figure(
      Solved solved, String when, String label, Unit unit, Read read, String element) {
    if (solved instanceof Unanswered u) {
      return u.missing();
    }
    Answer answer = (Answer) solved;
    int place = answer.nominal().place(element);
    if (place == Solution.NONE) {
      return Amount.known(0, unit, Origin.STANDARD, label, "no current can reach it");
    }
    return ranged(answer, when, label, unit, s -> read.of(s, place));
  }

  private static Amount between(
      Solved solved, String label, String when, String plus, String minus) {
    if (solved instanceof Unanswered u) {
      return u.missing();
    }
    Answer answer = (Answer) solved;
    int high = answer.network().net(plus);
    int low = answer.network().net(minus);
    return ranged(
        answer,
        when,
        label,
        Unit.VOLTS,
        s -> CaseNetwork.volts(s, high) - CaseNetwork.volts(s, low));
  }

  private static Amount ranged(
      Answer answer, String when, String label, Unit unit, ToDoubleFunction<Solution> read) {
    double value = read.applyAsDouble(answer.nominal());
    double low = value;
    double high = value;
    for (Solution end : answer.ends()) {
      double v = read.applyAsDouble(end);
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    return new Amount.Known(
        value, low, high, unit, answer.origin(), label, "circuit solved, " + when, answer.inputs());
  }

  private Solved solve(LoadCase loadCase) {
    return solved.computeIfAbsent(
        loadCase,
        c -> shorted(circuit.running()) ? SHORTED : answer(CaseNetwork.running(plan, circuit, c)));
  }

  private Solved charging() {
    if (charging.isEmpty()) {
      charging =
          Optional.of(
              shorted(circuit.charging()) ? SHORTED : answer(CaseNetwork.charging(plan, circuit)));
    }
    return charging.get();
  }

  /**
   * Whether plus meets minus in a state: then every current is the short's, and says nothing of the
   * parts.
   */
  private boolean shorted(State state) {
    Joins joins = new Joins(circuit, state);
    return circuit.devices(Device.Sort.PACK).stream()
        .anyMatch(p -> joins.joined(p.terminal("plus"), p.terminal("minus")));
  }

  private static Solved answer(CaseNetwork network) {
    if (!network.wants().isEmpty()) {
      return new Unanswered(new Amount.Missing(network.wants()));
    }
    try {
      List<Solution> solutions = Solver.solve(network.nominalAndEnds());
      List<Amount.Known> inputs = network.inputs();
      Origin origin = Origin.STANDARD;
      for (Amount.Known input : inputs) {
        origin = origin.and(input.origin());
      }
      return new Answer(
          network, solutions.get(0), solutions.subList(1, solutions.size()), inputs, origin);
    } catch (NoSolution | IllegalArgumentException e) {
      // A value far outside anything real (a gauge of 20,000) leaves nothing to solve; the message
      // names the element.
      return new Unanswered(
          Amount.missing(
              "wiring",
              "a circuit in which a current can flow",
              "mend what is reported about the wiring, then check again (" + e.getMessage() + ")"));
    }
  }

  private static String owner(String terminal) {
    return terminal.substring(0, Math.max(0, terminal.indexOf('.')));
  }
}
