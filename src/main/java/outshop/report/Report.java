package outshop.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outshop.circuit.Station;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.input.Problem;
import outshop.plots.Plot;
import outshop.units.Want;

/**
 * Everything known of one plan.
 *
 * @param findings violations, warnings and advice, ranked
 * @param cannotTell what could not be judged, ranked
 * @param fine what is all right, tightest first
 * @param accepted findings that the owner accepted and that count no more
 * @param unusedAcceptances entries of the plan's {@code accepted} list that match no finding, in
 *     words
 * @param wanted the values that are missing, the one that decides most rules first
 * @param parts the fitted parts along the power path
 * @param path the power path, as the circuit has it
 * @param cases the solved figures, case by case
 * @param cautions what to mind where people can be hurt
 * @param notes what the readers found worth saying about the files
 * @param rules how many rules the rule base holds
 * @param plots the data of each plot
 */
public record Report(
    String title,
    String planFile,
    List<Finding> findings,
    List<Finding> cannotTell,
    List<Finding> fine,
    List<Accepted> accepted,
    List<String> unusedAcceptances,
    List<Wanted> wanted,
    List<PartLine> parts,
    PowerPath path,
    List<CaseFigures> cases,
    List<String> cautions,
    List<Problem> notes,
    int rules,
    List<Plot> plots) {

  /**
   * The version of the report's JSON form; changed only when a field changes its meaning or goes
   * away.
   */
  public static final int VERSION = 1;

  /** A finding the owner accepted, with the reason given. */
  public record Accepted(Finding finding, String reason) {}

  /**
   * A missing value and the rules that it would decide.
   *
   * @param worst the worst consequence that those rules guard against
   */
  public record Wanted(Want want, List<String> rules, Consequence worst) {}

  /** A fitted part. */
  public record PartLine(
      String station,
      String name,
      String kind,
      String id,
      String title,
      Optional<Double> price,
      String origin) {}

  /**
   * The figures of one case.
   *
   * @param name such as {@code wheels slipping, pack full}
   * @param wants what is missing to solve it; then there are no elements
   */
  public record CaseFigures(String name, List<ElementFigures> elements, List<Want> wants) {}

  /** One element in one case: volts across it, amps through it, watts it takes up. */
  public record ElementFigures(String element, double volts, double amps, double watts) {}

  /** The same report with the data of its plots. */
  public Report with(List<Plot> drawn) {
    return new Report(
        title,
        planFile,
        findings,
        cannotTell,
        fine,
        accepted,
        unusedAcceptances,
        wanted,
        parts,
        path,
        cases,
        cautions,
        notes,
        rules,
        drawn);
  }

  /** How many findings of an outcome count. */
  public int count(Outcome outcome) {
    return switch (outcome) {
      case FINE -> fine.size();
      case CANNOT_TELL -> cannotTell.size();
      default -> (int) findings.stream().filter(f -> f.outcome() == outcome).count();
    };
  }

  /** What counts at one station, in the order of the whole report: worst first, fine last. */
  public List<Finding> at(Station station) {
    return Stream.of(findings, cannotTell, fine)
        .flatMap(List::stream)
        .filter(f -> f.at().station() == station)
        .toList();
  }

  /** How the verdict's arm stands: by the worst outcome that counts. */
  public Aspect verdict() {
    Aspect worst = cannotTell.isEmpty() ? Aspect.CLEAR : Aspect.CAUTION;
    for (Finding finding : findings) {
      Aspect aspect = Aspect.of(finding.outcome());
      worst = aspect.compareTo(worst) < 0 ? aspect : worst;
    }
    boolean nothingJudged = findings.isEmpty() && fine.isEmpty();
    return nothingJudged && worst == Aspect.CLEAR ? Aspect.CAUTION : worst;
  }
}
