package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import outshop.circuit.At;
import outshop.circuit.Places;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** Whether the parts go into their bays, how warm it gets there, and what holds them. */
final class FitFigures {
  /** What tape or glue alone may hold: common practice, no source. */
  private static final double MOST_TAPED_KILOGRAMS = 0.2;

  /** What holds a heavy part for years of running. */
  private static final Set<String> FIRM = Set.of("strap", "bracket", "screws");

  static final Pieces<FitFigures> PIECES =
      new Pieces<>(
          FitFigures::new,
          List.of(
              FitFigures::rooms,
              figures -> HeatFigures.of(figures.bench, figures.bays),
              FitFigures::masses));

  private final Bench bench;
  private final List<Bay> bays;
  private final List<Fitted> sized;

  private FitFigures(Bench bench) {
    this.bench = bench;
    this.bays = Bay.of(bench.plan());
    this.sized = Bay.sized(bench.plan());
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private List<Object> rooms() {
    Plan plan = bench.plan();
    List<Object> facts = new ArrayList<>();
    if (bays.isEmpty() && !sized.isEmpty()) {
      facts.add(unmeasured(plan));
    } else {
      bays.forEach(bay -> facts.addAll(PackingFigures.of(plan, bay)));
      facts.addAll(SpareRoom.of(plan, bays));
    }
    return facts;
  }

  private List<LooseMass> masses() {
    Plan plan = bench.plan();
    return sized.stream().filter(p -> !firm(plan, p)).map(p -> loose(plan, p)).toList();
  }

  private static BayFit unmeasured(Plan plan) {
    Want bays =
        new Want(
            "locomotive",
            "bays",
            "measure length, width and height inside every space that a part could sit in");
    return new BayFit(
        new At(Station.LOCOMOTIVE, "bays", "the bays"),
        "the parts",
        "not measured",
        Bay.clearance(plan),
        new Amount.Absent("placed"),
        Standing.open(List.of(bays)),
        "",
        "",
        "");
  }

  private static Said heldBy(Plan plan, Fitted part) {
    return plan.said("parts." + part.name() + ".held_by");
  }

  private static boolean firm(Plan plan, Fitted part) {
    return heldBy(plan, part) instanceof Said.Word word && FIRM.contains(word.word());
  }

  /** What holds a part matters only if it is heavy, or if nobody knows whether it is. */
  private static LooseMass loose(Plan plan, Fitted part) {
    Amount mass = part.amount("mass_grams");
    Said held = heldBy(plan, part);
    boolean light = mass instanceof Amount.Known k && !Exact.above(k.value(), MOST_TAPED_KILOGRAMS);
    if (held instanceof Said.Unsaid unsaid && !light) {
      List<Want> wants = new ArrayList<>(Standing.wants(mass));
      wants.add(unsaid.want());
      mass = new Amount.Missing(wants);
    }
    String words = held.is("nothing") || held.isUnsaid() ? "nothing" : held.or("") + " alone";
    return new LooseMass(
        Places.of(part),
        words,
        mass,
        Plan.fixed(MOST_TAPED_KILOGRAMS, Unit.KILOGRAMS, "heavy part", "common practice"));
  }
}
