package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Joins;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.circuit.State;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * Wires, connectors and the cables between vehicles, as things that are bent, pushed and pulled.
 */
final class WiringFigures {
  private static final Pattern CONTACT = Pattern.compile("([0-9]+)[ab]");

  /** Connectors in these leads go between vehicles, if there are several. */
  private static final List<String> THROUGH =
      List.of("wiring.feed_through", "wiring.motor_through", "wiring.lamps_through");

  static final Pieces<WiringFigures> PIECES =
      new Pieces<>(
          WiringFigures::new,
          List.of(
              figures -> LossFigures.of(figures.bench),
              WiringFigures::joints,
              figures -> WireFitFigures.of(figures.bench),
              figures -> FlexFigures.of(figures.bench),
              figures -> InsulationFigures.of(figures.bench),
              WiringFigures::plates,
              WiringFigures::continuities));

  private final Bench bench;
  private final Plan plan;
  private final boolean vehicles;

  private WiringFigures(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
    this.vehicles = bench.circuit().hasVehicles();
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private List<Object> joints() {
    List<Object> facts = new ArrayList<>();
    for (Fitted part : links()) {
      contacts(part).ifPresent(facts::add);
      keying(part).ifPresent(facts::add);
      reading(part).ifPresent(facts::add);
      need(part).ifPresent(facts::add);
    }
    return facts;
  }

  private List<Fitted> links() {
    List<Fitted> links = new ArrayList<>(plan.parts(Kind.CONNECTOR));
    links.addAll(plan.parts(Kind.CABLE));
    return links;
  }

  /** The numbers of a connector's or cable's contacts at which wires end. */
  private Set<Integer> used(Fitted part) {
    Set<Integer> used = new TreeSet<>();
    for (Link link : bench.circuit().links()) {
      if (link.sort() == Link.Sort.WIRE) {
        for (String terminal : List.of(link.from(), link.to())) {
          contact(part, terminal).ifPresent(used::add);
        }
      }
    }
    return used;
  }

  private static Optional<Integer> contact(Fitted part, String terminal) {
    String owner = part.name() + ".";
    if (!terminal.startsWith(owner)) {
      return Optional.empty();
    }
    Matcher contact = CONTACT.matcher(terminal.substring(owner.length()));
    return contact.matches() ? Optional.of(Integer.parseInt(contact.group(1))) : Optional.empty();
  }

  /** Nothing where no wire passes it. */
  private Optional<ContactCount> contacts(Fitted part) {
    int needed = used(part).size();
    if (needed == 0) {
      return Optional.empty();
    }
    Amount count =
        Amount.known(
            needed, Unit.COUNT, Origin.PLAN, part.name() + ": conductors", "counted in the wiring");
    return Optional.of(new ContactCount(Places.of(part), count, part.amount("contacts_count")));
  }

  private boolean betweenVehicles(Fitted part) {
    return part.is(Kind.CABLE)
        || (vehicles
            && THROUGH.stream()
                .anyMatch(k -> plan.text(k).filter(part.name()::equals).isPresent()));
  }

  private Optional<CableKeying> keying(Fitted part) {
    return betweenVehicles(part)
        ? Optional.of(new CableKeying(Places.of(part), part.said("keyed")))
        : Optional.empty();
  }

  /** Of a cable that was read, as one out of an old engine should be. */
  private Optional<CableReading> reading(Fitted part) {
    Said steady = plan.said("parts." + part.name() + ".steady");
    boolean old = part.is(Kind.CABLE) && part.part().origin() == Origin.MEASURED;
    return steady.isUnsaid() && !old
        ? Optional.empty()
        : Optional.of(new CableReading(Places.of(part), steady));
  }

  /** Nothing for a cable, which is there to be parted, and where no wire passes. */
  private Optional<ConnectorNeed> need(Fitted part) {
    if (part.is(Kind.CABLE) || used(part).isEmpty()) {
      return Optional.empty();
    }
    boolean parts = vehicles || leadsToPack(part);
    return Optional.of(
        new ConnectorNeed(Places.of(part), parts ? Standing.FINE : Standing.of("nothing-parts")));
  }

  /** Whether a wire joins it to a pack or a charger, which are unplugged now and then. */
  private boolean leadsToPack(Fitted part) {
    List<Fitted> unplugged = new ArrayList<>(plan.parts(Kind.PACK));
    unplugged.addAll(plan.parts(Kind.CHARGER));
    return bench.circuit().links().stream()
        .filter(l -> l.sort() == Link.Sort.WIRE)
        .filter(l -> ends(l, part.name()))
        .anyMatch(l -> unplugged.stream().anyMatch(p -> ends(l, p.name())));
  }

  static boolean ends(Link link, String owner) {
    return link.from().startsWith(owner + ".") || link.to().startsWith(owner + ".");
  }

  /**
   * Parts whose leads are said to pass metal with or without a grommet; of the others only cables,
   * which leave a metal vehicle through its wall.
   */
  private List<LeadThroughMetal> plates() {
    List<LeadThroughMetal> plates = new ArrayList<>();
    Said material = plan.said("locomotive.frame.material");
    for (Fitted part : plan.parts()) {
      Said grommet = plan.said("parts." + part.name() + ".grommet");
      boolean leaves = part.is(Kind.CABLE) && (material.is("metal") || material.isUnsaid());
      if (!grommet.isUnsaid()) {
        plates.add(
            new LeadThroughMetal(
                Places.of(part), grommet.is("yes") ? Standing.FINE : Standing.of("bare-edge")));
      } else if (leaves) {
        plates.add(new LeadThroughMetal(Places.of(part), Standing.open(grommet)));
      }
    }
    return plates;
  }

  private List<Continuity> continuities() {
    List<Continuity> continuities = new ArrayList<>();
    for (Plan.Joined pair : plan.joined()) {
      String name = pair.one() + " - " + pair.other();
      At at =
          new At(
              Station.WIRING, name, "the reading between " + pair.one() + " and " + pair.other());
      String device = device(pair);
      Standing standing =
          device.isEmpty()
              ? alsoInPlan(pair) ? Standing.FINE : Standing.of("against-plan")
              : Standing.of("own-path");
      continuities.add(new Continuity(at, pair.one(), pair.other(), device, standing));
    }
    return continuities;
  }

  /** The device of which both are terminals; empty if they belong to two things. */
  private String device(Plan.Joined pair) {
    int point = pair.one().indexOf('.');
    String owner = point < 0 ? "" : pair.one().substring(0, point);
    boolean both = !owner.isEmpty() && pair.other().startsWith(owner + ".");
    return both && bench.circuit().device(owner).isPresent() ? owner : "";
  }

  /** Whether the plan itself joins the two in some state, without the reading. */
  private boolean alsoInPlan(Plan.Joined pair) {
    List<Link> links =
        bench.circuit().links().stream()
            .filter(l -> !(l.sort() == Link.Sort.BODY && isReading(l)))
            .toList();
    for (State state : bench.circuit().states()) {
      if (new Joins(Circuits.of(bench.circuit(), links), state).joined(pair.one(), pair.other())) {
        return true;
      }
    }
    return false;
  }

  private boolean isReading(Link link) {
    return plan.joined().stream()
        .anyMatch(p -> p.one().equals(link.from()) && p.other().equals(link.to()));
  }
}
