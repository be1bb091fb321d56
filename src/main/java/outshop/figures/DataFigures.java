package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.circuit.At;
import outshop.circuit.Places;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Origin;

/**
 * What the readers found unlikely in the rows that this plan uses, and which parts rest on guesses.
 */
final class DataFigures {
  private DataFigures() {}

  static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    for (Problem problem : bench.problems()) {
      if (problem.severity() == Problem.Severity.UNLIKELY) {
        owner(bench.plan(), problem.place())
            .ifPresent(at -> facts.add(new DataRemark(at, "unlikely", what(problem))));
      }
    }
    for (Fitted fitted : bench.plan().parts()) {
      if (fitted.part().origin() == Origin.GUESS) {
        facts.add(new DataRemark(Places.of(fitted), "guessed", "its values are guesses"));
      }
    }
    return facts;
  }

  /**
   * The part whose row a place lies in, or the plan itself; nothing for rows that this plan does
   * not use.
   */
  private static Optional<At> owner(Plan plan, Place place) {
    for (Fitted fitted : plan.parts()) {
      Place row = fitted.part().place();
      if (row.file().equals(place.file()) && row.line() == place.line()) {
        return Optional.of(Places.of(fitted));
      }
    }
    return place.file().equals(plan.file()) ? Optional.of(Places.of(plan)) : Optional.empty();
  }

  private static String what(Problem problem) {
    String expected = problem.expected().isEmpty() ? "" : "; expected " + problem.expected();
    return problem.place().path()
        + ": "
        + problem.what()
        + (problem.found().isEmpty() ? "" : ", found " + problem.found())
        + expected;
  }
}
