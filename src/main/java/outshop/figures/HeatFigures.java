package outshop.figures;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import outshop.catalogue.Kind;
import outshop.circuit.Cases;
import outshop.circuit.Device;
import outshop.circuit.LoadCase;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/** Warmth in the bays: hot neighbours, what the parts bear, and what their own losses add. */
final class HeatFigures {
  /**
   * Heat that the walls of a closed bay give off by natural convection and radiation, in W/(m2 K):
   * the usual range of handbooks, from memory. An estimate.
   */
  private static final double WALLS_LEAST = 8;

  private static final double WALLS_MOST = 10;

  /** By how much a closed bay may warm up: common practice, no source. */
  private static final double MOST_KELVIN = 20;

  private static final double SQUARE_METRE = 1e-6;

  /** What bears only so much warmth around it. */
  private static final Set<Kind> TENDER =
      EnumSet.of(Kind.PACK, Kind.RECEIVER, Kind.DECODER, Kind.CAPACITOR, Kind.SPEAKER);

  private final Bench bench;
  private final Plan plan;
  private final List<Object> facts = new ArrayList<>();

  private HeatFigures(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
  }

  static List<Object> of(Bench bench, List<Bay> bays) {
    HeatFigures figures = new HeatFigures(bench);
    figures.neighbours();
    bays.forEach(figures::warmth);
    bays.forEach(figures::closed);
    return figures.facts;
  }

  private void neighbours() {
    List<String> heaters =
        bench.circuit().devices(Device.Sort.SMOKE_HEATER).stream().map(Device::name).toList();
    if (heaters.isEmpty()) {
      return;
    }
    for (Fitted pack : plan.parts(Kind.PACK)) {
      Optional<String> bay = Bay.bayOf(plan, pack);
      if (bay.isEmpty()) {
        Want where = new Want(pack.name(), "bay", "decide which bay it sits in");
        facts.add(new NearHeat(Places.of(pack), "", "", Standing.open(List.of(where))));
      } else {
        facts.add(near(pack, bay.get(), heaters));
      }
    }
  }

  private NearHeat near(Fitted pack, String bay, List<String> heaters) {
    Set<String> inside = new TreeSet<>();
    for (Fitted heater : plan.parts(Kind.SMOKE_HEATER)) {
      if (Bay.bayOf(plan, heater).equals(Optional.of(bay))) {
        inside.add(heater.name());
      }
    }
    if (!inside.isEmpty()) {
      return new NearHeat(
          Places.of(pack), bay, String.join(" and ", inside), Standing.of("inside"));
    }
    String key = "locomotive.bays." + bay + ".beside";
    Optional<List<String>> beside = plan.list(key);
    if (beside.isEmpty()) {
      return new NearHeat(Places.of(pack), bay, "", Standing.open(plan.said(key)));
    }
    Set<String> hot = new TreeSet<>(beside.get());
    hot.retainAll(heaters);
    return new NearHeat(
        Places.of(pack),
        bay,
        String.join(" and ", hot),
        hot.isEmpty() ? Standing.FINE : Standing.of("beside"));
  }

  private void warmth(Bay bay) {
    for (Fitted part : bay.parts()) {
      if (TENDER.contains(part.kind())) {
        facts.add(
            new BayWarmth(
                Places.of(part),
                part.kind(),
                bay.name(),
                plan.amount("locomotive.bays." + bay.name() + ".celsius"),
                part.amount("max_celsius")));
      }
    }
  }

  /** A bay that is not said to be closed counts as closed only if that would not matter. */
  private void closed(Bay bay) {
    Said closed = plan.said("locomotive.bays." + bay.name() + ".closed");
    BayLosses losses = new BayLosses(bench, bay);
    if (closed.is("no") || losses.none()) {
      return;
    }
    Amount watts = worst(losses);
    Amount rise = rise(bay, watts);
    if (closed instanceof Said.Unsaid unsaid
        && !(rise instanceof Amount.Known k && !Exact.above(k.value(), MOST_KELVIN))) {
      List<Want> wants = new ArrayList<>(Standing.wants(rise));
      wants.add(unsaid.want());
      rise = new Amount.Missing(wants);
    }
    Amount most = Plan.fixed(MOST_KELVIN, Unit.KELVIN, "usual rise at most", "common practice");
    facts.add(new BayHeat(bay.at(), watts, rise, most));
  }

  private static Amount worst(BayLosses losses) {
    List<Amount> all = new ArrayList<>();
    for (LoadCase.Charge charge : LoadCase.Charge.values()) {
      all.add(losses.watts(new LoadCase(charge, LoadCase.Drive.SLIPPING)));
      all.add(losses.watts(new LoadCase(charge, LoadCase.Drive.CRUISING)));
    }
    return Cases.greatest(all);
  }

  /** Judged at the end that warms most; the rest of the estimate is carried as its range. */
  private static Amount rise(Bay bay, Amount watts) {
    Amount surface =
        Amount.computed(
            bay.name() + ": inner surface",
            Unit.SQUARE_MILLIMETRES,
            "2 x (length x width + length x height + width x height)",
            v -> 2 * (v[0] * v[1] + v[0] * v[2] + v[1] * v[2]) / SQUARE_METRE,
            bay.length(),
            bay.width(),
            bay.height());
    Amount walls =
        Amount.assumed(
            WALLS_LEAST,
            WALLS_LEAST,
            WALLS_MOST,
            Unit.COUNT,
            bay.name() + ": W per m2 and K given off",
            "estimate for still air, from memory; judged at the lower end");
    return Amount.computed(
        bay.name() + ": warms by",
        Unit.KELVIN,
        "heat / (W per m2 and K x surface)",
        v -> v[0] / (v[1] * v[2] * SQUARE_METRE),
        watts,
        walls,
        surface);
  }
}
