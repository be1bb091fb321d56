package outshop.figures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Places;
import outshop.figures.fit.Arrangement;
import outshop.figures.fit.Box;
import outshop.figures.fit.Turns;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Want;

/**
 * Where the parts could go for which the plan names no bay. Smoke heaters are left out: they sit in
 * the chimney.
 */
final class SpareRoom {
  /** Distributions over the bays after which the search gives up. */
  private static final int MOST_TRIED = 200;

  private final Plan plan;
  private final List<Bay> bays;
  private final Map<List<Box>, Arrangement> known = new HashMap<>();
  private int tried;
  private boolean unsettled;

  private SpareRoom(Plan plan, List<Bay> bays) {
    this.plan = plan;
    this.bays = bays.stream().filter(SpareRoom::measured).toList();
  }

  private static boolean measured(Bay bay) {
    return bay.room().isPresent() && bay.parts().stream().allMatch(p -> Bay.size(p).isPresent());
  }

  static List<Object> of(Plan plan, List<Bay> bays) {
    SpareRoom spare = new SpareRoom(plan, bays);
    List<Fitted> homeless =
        Bay.sized(plan).stream()
            .filter(p -> p.kind() != Kind.SMOKE_HEATER)
            .filter(p -> Bay.bayOf(plan, p).isEmpty())
            .toList();
    List<Fitted> sized = homeless.stream().filter(p -> Bay.size(p).isPresent()).toList();
    Map<String, String> together = new HashMap<>();
    boolean all = spare.distribute(sized, 0, together);
    List<Object> facts = new ArrayList<>();
    for (Fitted part : homeless) {
      facts.add(sized.contains(part) ? spare.fact(part, all, together) : spare.unknown(part));
    }
    return facts;
  }

  private PartWithoutBay unknown(Fitted part) {
    List<Want> wants = new ArrayList<>(Bay.sizeWants(part));
    wants.add(bayWanted(part));
    return new PartWithoutBay(Places.of(part), Standing.open(wants), "");
  }

  private static Want bayWanted(Fitted part) {
    return new Want(part.name(), "bay", "decide which bay it sits in");
  }

  private PartWithoutBay fact(Fitted part, boolean all, Map<String, String> together) {
    if (all) {
      return new PartWithoutBay(Places.of(part), Standing.of("room"), together.get(part.name()));
    }
    Optional<String> alone =
        bays.stream().filter(b -> goes(b, List.of(part))).map(Bay::name).findFirst();
    if (alone.isEmpty() && unsettled || bays.isEmpty()) {
      return new PartWithoutBay(Places.of(part), Standing.open(List.of(bayWanted(part))), "");
    }
    return new PartWithoutBay(
        Places.of(part), Standing.of(alone.isPresent() ? "crowded" : "nowhere"), alone.orElse(""));
  }

  /** Gives every part from {@code next} on a bay, the first bays first; false if that cannot be. */
  private boolean distribute(List<Fitted> parts, int next, Map<String, String> bayOf) {
    if (next == parts.size()) {
      return true;
    }
    for (Bay bay : bays) {
      List<Fitted> with = new ArrayList<>();
      for (Fitted before : parts.subList(0, next)) {
        if (bay.name().equals(bayOf.get(before.name()))) {
          with.add(before);
        }
      }
      with.add(parts.get(next));
      if (++tried > MOST_TRIED) {
        unsettled = true;
        return false;
      }
      if (goes(bay, with)) {
        bayOf.put(parts.get(next).name(), bay.name());
        if (distribute(parts, next + 1, bayOf)) {
          return true;
        }
        bayOf.remove(parts.get(next).name());
      }
    }
    return false;
  }

  private boolean goes(Bay bay, List<Fitted> more) {
    List<Fitted> all = new ArrayList<>(bay.parts());
    all.addAll(more);
    List<Box> boxes = new ArrayList<>(Bay.boxes(plan, all, Turns.ANY));
    Arrangement answer =
        known.computeIfAbsent(
            withRoom(bay, boxes),
            k ->
                PackingFigures.arrange(
                    bay.room().orElseThrow(),
                    Bay.clearanceMicrometres(plan),
                    boxes,
                    PackingFigures.FEW_STEPS));
    unsettled |= answer instanceof Arrangement.Unsettled;
    return answer instanceof Arrangement.Found;
  }

  /** The boxes with the bay in front, as what a search was asked. */
  private static List<Box> withRoom(Bay bay, List<Box> boxes) {
    List<Box> asked = new ArrayList<>(boxes);
    asked.add(0, new Box(bay.name(), List.of(bay.room().orElseThrow())));
    return List.copyOf(asked);
  }
}
