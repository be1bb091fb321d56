package outshop.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import outshop.circuit.Cases;
import outshop.circuit.Circuit;
import outshop.circuit.LoadCase;
import outshop.circuit.Places;
import outshop.circuit.solve.Solution;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Nearest;
import outshop.input.Problem;
import outshop.input.Shown;
import outshop.plan.Accepted;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.ranking.Ranking;
import outshop.units.Amount;
import outshop.units.Want;

/** Puts a report together from what the rules found and what the circuit gave. */
public final class Reporting {
  private Reporting() {}

  /**
   * The report of one plan.
   *
   * @param binding whether a rule protects people, so that accepting its finding does not take it
   *     away
   * @param rules the names of all rules that were asked
   */
  public static Report of(
      Plan plan,
      Circuit circuit,
      Cases cases,
      List<Finding> found,
      Predicate<String> binding,
      List<String> rules,
      List<Problem> notes) {
    List<Finding> ranked = Ranking.ranked(found);
    List<Finding> counted = new ArrayList<>();
    List<Report.Accepted> accepted = new ArrayList<>();
    TreeSet<Integer> used = new TreeSet<>();
    for (Finding finding : ranked) {
      Optional<Integer> entry = entry(plan.accepted(), finding);
      entry.ifPresent(used::add);
      if (entry.isPresent() && !binding.test(finding.rule())) {
        accepted.add(new Report.Accepted(finding, plan.accepted().get(entry.get()).reason()));
      } else {
        counted.add(finding);
      }
    }
    return new Report(
        plan.title(),
        plan.file(),
        counted.stream()
            .filter(f -> f.outcome() != Outcome.FINE && f.outcome() != Outcome.CANNOT_TELL)
            .toList(),
        counted.stream().filter(f -> f.outcome() == Outcome.CANNOT_TELL).toList(),
        counted.stream().filter(f -> f.outcome() == Outcome.FINE).toList(),
        accepted,
        unused(plan.accepted(), used, binding, found, rules),
        wanted(counted),
        parts(plan),
        PathFinder.of(plan, circuit, counted.stream().map(f -> f.at().station()).toList()),
        figures(cases),
        Cautions.of(plan),
        notes,
        rules.size(),
        List.of());
  }

  /**
   * The findings that count: all but those that the owner accepted, where accepting takes a finding
   * away.
   *
   * @param binding whether a rule protects people, so that accepting its finding does not take it
   *     away
   */
  public static List<Finding> counted(Plan plan, List<Finding> found, Predicate<String> binding) {
    return found.stream()
        .filter(f -> binding.test(f.rule()) || entry(plan.accepted(), f).isEmpty())
        .toList();
  }

  private static Optional<Integer> entry(List<Accepted> accepted, Finding finding) {
    if (finding.outcome() == Outcome.FINE || finding.outcome() == Outcome.CANNOT_TELL) {
      return Optional.empty();
    }
    for (int i = 0; i < accepted.size(); i++) {
      Accepted entry = accepted.get(i);
      if (entry.rule().equals(finding.rule()) && entry.where().equals(finding.at().name())) {
        return Optional.of(i);
      }
    }
    return Optional.empty();
  }

  private static List<String> unused(
      List<Accepted> accepted,
      Set<Integer> used,
      Predicate<String> binding,
      List<Finding> found,
      List<String> rules) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < accepted.size(); i++) {
      Accepted entry = accepted.get(i);
      String name = Shown.text(entry.rule()) + " at " + Shown.text(entry.where());
      if (!used.contains(i)) {
        words.add(name + ": accepted, but " + whyUnused(entry, found, rules));
      } else if (binding.test(entry.rule())) {
        words.add(name + ": accepted, but the rule protects people, so it still counts");
      }
    }
    return words;
  }

  private static String whyUnused(Accepted entry, List<Finding> found, List<String> rules) {
    if (!rules.contains(entry.rule())) {
      return "there is no such rule" + Nearest.hint(entry.rule(), rules);
    }
    boolean untold =
        found.stream()
            .anyMatch(
                f ->
                    f.outcome() == Outcome.CANNOT_TELL
                        && f.rule().equals(entry.rule())
                        && f.at().name().equals(entry.where()));
    return untold
        ? "what cannot be told cannot be accepted; state the value that is wanted"
        : "there is no such finding; take the entry out";
  }

  private static List<Report.Wanted> wanted(List<Finding> counted) {
    Map<Want, TreeSet<String>> byWant = new TreeMap<>();
    Map<Want, Consequence> worst = new TreeMap<>();
    for (Finding finding : counted) {
      for (Want want : finding.wants()) {
        byWant.computeIfAbsent(want, w -> new TreeSet<>()).add(finding.rule());
        worst.merge(want, finding.consequence(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
      }
    }
    List<Report.Wanted> wanted = new ArrayList<>();
    byWant.forEach(
        (want, rules) -> wanted.add(new Report.Wanted(want, List.copyOf(rules), worst.get(want))));
    wanted.sort(
        Comparator.comparingInt((Report.Wanted w) -> -w.rules().size())
            .thenComparing(Report.Wanted::want));
    return wanted;
  }

  private static List<Report.PartLine> parts(Plan plan) {
    List<Report.PartLine> lines = new ArrayList<>();
    for (Fitted fitted : plan.parts()) {
      Amount price = fitted.amount("price_each");
      lines.add(
          new Report.PartLine(
              Places.station(fitted.kind()).words(),
              fitted.name(),
              fitted.kind().word(),
              fitted.part().id(),
              fitted.part().title(),
              price instanceof Amount.Known k ? Optional.of(k.value()) : Optional.empty(),
              fitted.part().origin().words()));
    }
    return lines;
  }

  private static List<Report.CaseFigures> figures(Cases cases) {
    List<Report.CaseFigures> figures = new ArrayList<>();
    for (LoadCase loadCase : LoadCase.all()) {
      List<Report.ElementFigures> elements = new ArrayList<>();
      cases
          .solution(loadCase)
          .ifPresent(
              solution -> {
                for (int place = 0; place < solution.elements().size(); place++) {
                  elements.add(element(solution, place));
                }
              });
      figures.add(new Report.CaseFigures(loadCase.words(), elements, cases.wants(loadCase)));
    }
    return figures;
  }

  private static Report.ElementFigures element(Solution solution, int place) {
    return new Report.ElementFigures(
        solution.elements().get(place).name(),
        solution.volts(place),
        solution.amps(place),
        solution.watts(place));
  }
}
