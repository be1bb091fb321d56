package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.LoadCase;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * The currents that count in each element of the circuit: for long, at most, standing, charging. A
 * circuit that is not closed, or that has no motor, carries no current; that is a gap in the plan
 * and no figure, so it comes out as missing.
 */
final class Demands {
  /** Less than this leaks through something that is off; it counts as no current. */
  static final double NOTHING_AMPS = 1e-6;

  private static final String SOLVED = "circuit solved, ";

  private final Bench bench;
  private final Set<Link> chargingWay;
  private final Optional<Amount.Missing> unfed;
  private final Optional<Amount.Missing> unmoved;

  /** A greatest current and when it flows, in words. */
  record Peak(Amount amps, String moment) {}

  Demands(Bench bench) {
    this.bench = bench;
    this.chargingWay = chargingWay(bench);
    this.unfed = unfed();
    this.unmoved = unfed.or(this::unmoved);
  }

  /** Standing, sound and lights on, over every charge of the pack. */
  Amount standing(String element) {
    return unfed.isPresent() ? unfed.get() : over(LoadCase.Drive.STANDING, element);
  }

  /**
   * The worse of slipping and cruising, over every charge of the pack. Slipping is the most a
   * locomotive can draw for long, so a cruising current that nobody measured hides nothing.
   */
  Amount sustained(String element) {
    if (unmoved.isPresent()) {
      return unmoved.get();
    }
    Amount slipping = over(LoadCase.Drive.SLIPPING, element);
    Amount cruising = over(LoadCase.Drive.CRUISING, element);
    return cruising.isKnown() ? Cases.greatest(List.of(slipping, cruising)) : slipping;
  }

  /** With the wheels blocked, over every charge of the pack. */
  Amount blocked(String element) {
    return doing(LoadCase.Drive.BLOCKED, element);
  }

  /** Doing one thing, over every charge of the pack. */
  Amount doing(LoadCase.Drive drive, String element) {
    return drive == LoadCase.Drive.STANDING
        ? standing(element)
        : unmoved.isPresent() ? unmoved.get() : over(drive, element);
  }

  /**
   * While charging. Absent where no charging current passes: without a charger, or where the
   * current is nothing; where it cannot be solved, on links off the charger's way.
   */
  Amount charging(Link link) {
    Amount none = new Amount.Absent(link.name() + ", charging");
    if (bench.plan().parts(Kind.CHARGER).isEmpty()) {
      return none;
    }
    Amount amps = bench.cases().chargingAmps(link.name());
    boolean concerned = amps.isMissing() ? chargingWay.contains(link) : !isNothing(amps);
    return concerned ? amps : none;
  }

  /** The links on the shortest ways from the charger's two leads to the pack's. */
  private static Set<Link> chargingWay(Bench bench) {
    Joins joins = new Joins(bench.circuit(), bench.circuit().charging());
    Set<Link> links = new LinkedHashSet<>();
    for (Fitted charger : bench.plan().parts(Kind.CHARGER)) {
      for (Fitted pack : bench.plan().parts(Kind.PACK)) {
        for (String from : new String[] {".plus", ".minus"}) {
          for (String to : new String[] {".plus", ".minus"}) {
            joins.way(charger.name() + from, pack.name() + to).ifPresent(links::addAll);
          }
        }
      }
    }
    return links;
  }

  /**
   * The most an element ever carries: wheels blocked, and on top what a motor's logged start surge
   * exceeds its blocked current by.
   *
   * @param counts which motors' surges reach the element
   */
  Peak peak(String element, Predicate<String> counts) {
    Amount blocked = blocked(element);
    List<Amount> all = new ArrayList<>(List.of(blocked));
    for (String motor : bench.plan().names("locomotive.motors")) {
      if (counts.test(motor)) {
        surgeBeyondBlocked(motor).ifPresent(all::add);
      }
    }
    return all.size() == 1 || !blocked.isKnown()
        ? new Peak(blocked, when(blocked))
        : new Peak(
            Amount.sum(element + ", starting", Unit.AMPS, all), "starting, by the logged surge");
  }

  private Optional<Amount> surgeBeyondBlocked(String motor) {
    Amount surge = bench.plan().amount("locomotive.motors." + motor + ".start_surge");
    Amount blocked = blocked(motor);
    if (!(surge instanceof Amount.Known s)
        || !(blocked instanceof Amount.Known b)
        || !Exact.above(s.value(), b.value())) {
      return Optional.empty();
    }
    return Optional.of(
        Amount.computed(
            motor + ": start surge beyond blocked",
            Unit.AMPS,
            "logged start surge - blocked current",
            v -> Math.max(0, v[0] - v[1]),
            surge,
            blocked));
  }

  /** When a solved figure holds, in words; empty for any other. */
  static String when(Amount amount) {
    return amount instanceof Amount.Known k && k.how().startsWith(SOLVED)
        ? k.how().substring(SOLVED.length())
        : "";
  }

  /** The rating that a lasting current asks for, with a quarter in reserve (common practice). */
  static Amount withReserve(String name, Amount amps) {
    return amps.times(1.25, name + ": rating with a quarter in reserve", "current x 1.25");
  }

  /** Whether an amount is known and as good as no current. */
  static boolean isNothing(Amount amps) {
    return amps instanceof Amount.Known k && k.high() < NOTHING_AMPS;
  }

  private Amount over(LoadCase.Drive drive, String element) {
    List<Amount> all = new ArrayList<>();
    for (LoadCase.Charge charge : LoadCase.Charge.values()) {
      all.add(bench.cases().amps(new LoadCase(charge, drive), element));
    }
    return Cases.greatest(all);
  }

  /** Why no current flows at all: no pack, no wiring, or a way that is not closed. */
  private Optional<Amount.Missing> unfed() {
    List<Fitted> packs = bench.plan().parts(Kind.PACK);
    if (packs.isEmpty()) {
      return gap("parts", "pack", "choose a pack");
    }
    if (bench.plan().said("wiring.pattern") instanceof Said.Unsaid unsaid) {
      return Optional.of(new Amount.Missing(List.of(unsaid.want())));
    }
    LoadCase standing = new LoadCase(LoadCase.Charge.FULL, LoadCase.Drive.STANDING);
    for (Fitted pack : packs) {
      if (!isNothing(bench.cases().amps(standing, pack.name()))) {
        return Optional.empty();
      }
    }
    return gap(
        "wiring",
        "a closed way from pack to load",
        "follow the wires with the plug out and the switch on: as planned, no current can flow");
  }

  /** Why no motor turns: none is described, or none is joined to anything. */
  private Optional<Amount.Missing> unmoved() {
    List<String> motors = bench.plan().names("locomotive.motors");
    if (motors.isEmpty()) {
      return gap("locomotive", "motors", "name the motor and measure what it draws");
    }
    Joins running = new Joins(bench.circuit(), bench.circuit().running());
    List<String> drives = drives();
    for (String motor : motors) {
      boolean plus = drives.stream().anyMatch(d -> running.joined(d, motor + ".plus"));
      boolean minus = drives.stream().anyMatch(d -> running.joined(d, motor + ".minus"));
      if (!plus || !minus) {
        return gap(
            "wiring",
            "a closed way to motor " + motor,
            "follow its two wires: as planned, nothing drives it");
      }
    }
    return Optional.empty();
  }

  /** The terminals that can drive a motor: a decoder's motor output, a receiver's output. */
  private List<String> drives() {
    List<String> terminals = new ArrayList<>();
    for (Fitted decoder : bench.plan().parts(Kind.DECODER)) {
      terminals.addAll(List.of(decoder.name() + ".motor+", decoder.name() + ".motor-"));
    }
    for (Fitted receiver : bench.plan().parts(Kind.RECEIVER)) {
      terminals.addAll(List.of(receiver.name() + ".out-a", receiver.name() + ".out-b"));
    }
    return terminals;
  }

  private static Optional<Amount.Missing> gap(String where, String what, String how) {
    return Optional.of(Amount.missing(where, what, how));
  }
}
