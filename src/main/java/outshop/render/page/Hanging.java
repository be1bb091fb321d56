package outshop.render.page;

import java.util.ArrayList;
import java.util.List;
import outshop.circuit.Station;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.report.Aspect;
import outshop.report.Report;

/**
 * What hangs at one station of the power path, of one outcome.
 *
 * @param numbers the findings' numbers in the ranked list, from 1; none for what is not numbered
 * @param count how many there are
 */
record Hanging(Outcome outcome, List<Integer> numbers, int count) {
  Hanging {
    numbers = List.copyOf(numbers);
  }

  /** Worst first; only outcomes that there are. */
  static List<Hanging> at(Report report, Station station) {
    List<Hanging> all = new ArrayList<>();
    for (Outcome outcome : Outcome.values()) {
      List<Finding> found =
          report.at(station).stream().filter(f -> f.outcome() == outcome).toList();
      if (!found.isEmpty()) {
        List<Integer> numbers =
            found.stream().map(f -> report.findings().indexOf(f) + 1).filter(n -> n > 0).toList();
        all.add(new Hanging(outcome, numbers, found.size()));
      }
    }
    return all;
  }

  Aspect aspect() {
    return Aspect.of(outcome);
  }
}
