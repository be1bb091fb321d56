package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Places;
import outshop.circuit.Station;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Unit;

/** What is missing from the plan's list of parts. */
final class CompletenessFigures {
  static final Pieces<Bench> PIECES =
      new Pieces<>(
          bench -> bench,
          List.of(
              CompletenessFigures::presence,
              CompletenessFigures::halves,
              bench -> List.of(cost(bench.plan()))));

  private CompletenessFigures() {}

  private static List<ConnectorHalves> halves(Bench bench) {
    List<ConnectorHalves> facts = new ArrayList<>();
    for (Kind kind : List.of(Kind.CONNECTOR, Kind.CABLE)) {
      for (Fitted fitted : bench.plan().parts(kind)) {
        if (kind == Kind.CABLE || fitted.said("half").isNot("pair")) {
          facts.add(
              new ConnectorHalves(
                  Places.of(fitted),
                  bench.plan().said("parts." + fitted.name() + ".other_half"),
                  List.of()));
        }
      }
    }
    return facts;
  }

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }

  private static List<Object> presence(Bench bench) {
    Plan plan = bench.plan();
    Map<String, At> missing = new LinkedHashMap<>();
    boolean drivesMotor =
        plan.parts(Kind.RECEIVER).stream().anyMatch(r -> r.said("output").is("motor-drive"));
    boolean primary =
        plan.parts(Kind.PACK).stream()
            .anyMatch(p -> p.said("chemistry").or("").startsWith("primary"));
    boolean takenOut = plan.said("wiring.pattern").is("pack-taken-out");
    note(missing, plan, Kind.PACK, Station.PACK, true);
    note(missing, plan, Kind.RECEIVER, Station.RADIO, true);
    note(missing, plan, Kind.DECODER, Station.DECODER, !drivesMotor);
    note(missing, plan, Kind.HANDSET, Station.RADIO, true);
    note(missing, plan, Kind.SWITCH, Station.SWITCH, true);
    note(missing, plan, Kind.CHARGER, Station.CHARGER, !primary);
    note(missing, plan, Kind.JACK, Station.JACK, !primary && !takenOut);
    List<Object> facts = new ArrayList<>();
    missing.forEach((kind, at) -> facts.add(new Presence(at, kind)));
    if (facts.isEmpty()) {
      facts.add(new Presence(Places.of(plan), "fine"));
    }
    return facts;
  }

  private static void note(
      Map<String, At> missing, Plan plan, Kind kind, Station station, boolean needed) {
    if (needed && plan.parts(kind).isEmpty()) {
      missing.put(kind.word(), Places.at(station, kind.word()));
    }
  }

  private static Cost cost(Plan plan) {
    List<Amount> prices = new ArrayList<>();
    for (Fitted fitted : plan.parts()) {
      prices.add(fitted.amount("price_each").named(fitted.name() + ": price"));
    }
    Amount total =
        prices.isEmpty()
            ? new Amount.Absent("cost")
            : Amount.sum("cost of the parts", Unit.MONEY, prices);
    Amount budget = plan.amount("wishes.budget");
    return new Cost(
        Places.of(plan), total, budget.isMissing() ? new Amount.Absent("budget") : budget);
  }
}
