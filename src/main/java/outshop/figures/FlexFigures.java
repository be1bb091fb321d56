package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.catalogue.Kind;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Said;

/** What flexes while the locomotive runs, and whether it is stranded. */
final class FlexFigures {
  private final Bench bench;

  private FlexFigures(Bench bench) {
    this.bench = bench;
  }

  static List<Flexing> of(Bench bench) {
    FlexFigures figures = new FlexFigures(bench);
    List<Flexing> flexing = new ArrayList<>();
    for (Fitted part : bench.plan().parts()) {
      flexing.addAll(figures.at(part));
    }
    return flexing;
  }

  private List<Flexing> at(Fitted part) {
    Plan plan = bench.plan();
    Said moves = plan.said("parts." + part.name() + ".moves");
    // A cable between vehicles flexes in every curve, unless the plan says otherwise.
    boolean flexes = moves.is("yes") || (part.is(Kind.CABLE) && moves.isUnsaid());
    boolean mayFlex = flexes || (part.is(Kind.CONNECTOR) && moves.isUnsaid());
    List<Flexing> found = new ArrayList<>();
    if (!mayFlex) {
      return found;
    }
    boolean ownWires = part.is(Kind.CABLE) || part.is(Kind.WIRE);
    if (ownWires) {
      found.add(new Flexing(Places.of(part), part.name(), standing(part.said("stranding"))));
      return found;
    }
    wires(part)
        .forEach(
            (name, wire) -> {
              Said stranding = wire.said("stranding");
              if (flexes) {
                found.add(new Flexing(Places.of(part), name, standing(stranding)));
              } else if (stranding.is("solid")) {
                found.add(new Flexing(Places.of(part), name, Standing.open(moves)));
              }
            });
    return found;
  }

  private static Standing standing(Said stranding) {
    if (stranding.isUnsaid()) {
      return Standing.open(stranding);
    }
    return stranding.is("solid") ? Standing.of("solid") : Standing.FINE;
  }

  /** Of each sort of wire that ends at a part, the first; by its two ends. */
  private Map<String, Fitted> wires(Fitted part) {
    Map<String, Fitted> byName = new LinkedHashMap<>();
    for (Link link : bench.circuit().links()) {
      boolean ends = link.sort() == Link.Sort.WIRE && WiringFigures.ends(link, part.name());
      if (ends && link.part().isPresent()) {
        Fitted wire = link.part().get();
        if (byName.values().stream().noneMatch(w -> w.part().equals(wire.part()))) {
          byName.put(link.name(), wire);
        }
      }
    }
    return byName;
  }
}
