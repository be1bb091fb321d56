package outshop.render.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import outshop.drawing.Box;
import outshop.drawing.Route;
import outshop.drawing.WiringDrawing;
import outshop.findings.Finding;
import outshop.findings.Outcome;

/** The violations and warnings that hang at something in the drawing, by its name. */
final class Faults {
  private final Map<String, List<Fault>> byName = new LinkedHashMap<>();
  private final List<Fault> all = new ArrayList<>();
  private int elsewhere;

  Faults(WiringDrawing drawing, List<Finding> findings) {
    drawing.boxes().stream().map(Box::name).forEach(n -> byName.put(n, new ArrayList<>()));
    for (Route route : drawing.routes()) {
      byName.putIfAbsent(route.link().name(), new ArrayList<>());
    }
    for (Finding finding : findings) {
      if (finding.outcome() == Outcome.VIOLATION || finding.outcome() == Outcome.WARNING) {
        add(finding);
      }
    }
  }

  private void add(Finding finding) {
    List<Fault> there = byName.get(finding.at().name());
    if (there == null) {
      elsewhere++;
      return;
    }
    Fault fault = new Fault(all.size() + 1, finding);
    there.add(fault);
    all.add(fault);
  }

  /** Those at a box or a link, worst first as in the report. */
  List<Fault> at(String name) {
    return byName.getOrDefault(name, List.of());
  }

  List<Fault> all() {
    return all;
  }

  /** How many hang at nothing that is drawn, such as the plan as a whole. */
  int elsewhere() {
    return elsewhere;
  }

  /** The word of the worst and the numbers of all, such as {@code violation 1, 2}. */
  static String words(List<Fault> faults) {
    StringBuilder words = new StringBuilder(faults.get(0).word());
    for (int i = 0; i < faults.size() && i < 2; i++) {
      words.append(i == 0 ? " " : ", ").append(faults.get(i).number());
    }
    return faults.size() > 2 ? words.append(" …").toString() : words.toString();
  }
}
