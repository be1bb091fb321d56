package outshop.figures;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.circuit.Device;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;

/** How warm the insulation of wires, cables and sleeves gets, where that is known. */
final class InsulationFigures {
  /** Parts with insulation of their own that may have a bay. */
  private static final Set<Kind> INSULATED = Set.of(Kind.CABLE, Kind.SLEEVE, Kind.WIRE);

  private final Bench bench;
  private final Plan plan;

  private InsulationFigures(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
  }

  /** A place that may be warm. */
  private record Warm(String place, Amount celsius) {}

  static List<InsulationHeat> of(Bench bench) {
    InsulationFigures figures = new InsulationFigures(bench);
    Map<Object, InsulationHeat> heats = new LinkedHashMap<>();
    for (Link link : bench.circuit().links()) {
      if (link.sort() == Link.Sort.WIRE && link.part().isPresent()) {
        figures.wire(link, heats);
      }
    }
    for (Fitted part : bench.plan().parts()) {
      if (INSULATED.contains(part.kind())) {
        figures
            .bay(part.name())
            .ifPresent(
                w ->
                    heats.put(
                        List.of(part.name(), w.place()),
                        new InsulationHeat(
                            Places.of(part), w.place(), w.celsius(), part.amount("max_celsius"))));
      }
    }
    return List.copyOf(heats.values());
  }

  /** Of each sort of wire, one fact for each place that it reaches. */
  private void wire(Link link, Map<Object, InsulationHeat> heats) {
    Fitted wire = link.part().orElseThrow();
    for (String terminal : List.of(link.from(), link.to())) {
      int point = terminal.indexOf('.');
      String owner = point < 0 ? terminal : terminal.substring(0, point);
      heater(owner)
          .or(() -> bay(owner))
          .ifPresent(
              w ->
                  heats.putIfAbsent(
                      List.of(w.place(), WireFitFigures.sort(link.part())),
                      new InsulationHeat(
                          Places.wire(link.name()),
                          w.place(),
                          w.celsius(),
                          wire.amount("max_celsius"))));
    }
  }

  /** The outside of a smoke heater, which its leads touch. */
  private Optional<Warm> heater(String owner) {
    return bench
        .circuit()
        .device(owner)
        .filter(d -> d.sort() == Device.Sort.SMOKE_HEATER)
        .map(d -> new Warm(d.name(), surface(d)));
  }

  private static Amount surface(Device heater) {
    return heater
        .part()
        .map(p -> p.amount("surface_celsius"))
        .orElseGet(
            () ->
                Amount.missing(
                    heater.name(),
                    "surface_celsius",
                    "hold a thermometer probe to it after ten minutes with fluid, and enter the"
                        + " heater among the parts with what it shows"));
  }

  private Optional<Warm> bay(String owner) {
    return plan.text("parts." + owner + ".bay")
        .map(b -> new Warm("bay " + b, plan.amount("locomotive.bays." + b + ".celsius")));
  }
}
