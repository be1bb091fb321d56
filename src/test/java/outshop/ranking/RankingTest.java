package outshop.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import outshop.circuit.At;
import outshop.circuit.Station;
import outshop.findings.Consequence;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.units.Origin;

/** The order of findings: each step of it decides only where all before it are equal. */
final class RankingTest {
  /**
   * In the order they must come out; each differs from the one before in one step only, and is
   * better in all later ones.
   */
  private static final List<Finding> RANKED =
      List.of(
          finding(
              Outcome.VIOLATION, Consequence.HARM, 0.9, Origin.STANDARD, Station.PACK, "b/b", "b"),
          finding(
              Outcome.VIOLATION, Consequence.HARM, 0.5, Origin.STANDARD, Station.PACK, "a/a", "a"),
          finding(
              Outcome.VIOLATION,
              Consequence.DESTROYS,
              0.9,
              Origin.STANDARD,
              Station.PACK,
              "a/a",
              "a"),
          finding(
              Outcome.VIOLATION,
              Consequence.DESTROYS,
              0.2,
              Origin.DATA_SHEET,
              Station.SOUND,
              "a/a",
              "a"),
          finding(
              Outcome.VIOLATION, Consequence.DESTROYS, 0.2, Origin.GUESS, Station.PACK, "a/a", "a"),
          finding(
              Outcome.VIOLATION,
              Consequence.DESTROYS,
              0.2,
              Origin.GUESS,
              Station.SOUND,
              "a/a",
              "a"),
          finding(
              Outcome.VIOLATION,
              Consequence.DESTROYS,
              0.2,
              Origin.GUESS,
              Station.SOUND,
              "a/b",
              "a"),
          finding(
              Outcome.VIOLATION,
              Consequence.DESTROYS,
              0.2,
              Origin.GUESS,
              Station.SOUND,
              "a/b",
              "b"),
          finding(
              Outcome.WARNING, Consequence.HARM, 0.9, Origin.STANDARD, Station.PACK, "a/a", "a"),
          finding(
              Outcome.CANNOT_TELL,
              Consequence.HARM,
              0.9,
              Origin.STANDARD,
              Station.PACK,
              "a/a",
              "a"),
          finding(Outcome.ADVICE, Consequence.HARM, 0.9, Origin.STANDARD, Station.PACK, "a/a", "a"),
          finding(
              Outcome.FINE, Consequence.NUISANCE, -0.1, Origin.STANDARD, Station.PACK, "a/a", "a"),
          finding(
              Outcome.FINE, Consequence.NUISANCE, -0.4, Origin.STANDARD, Station.PACK, "a/a", "a"));

  @Test
  void anyOrderComesOutTheSame() {
    Random random = new Random(7);
    for (int round = 0; round < 50; round++) {
      List<Finding> shuffled = new ArrayList<>(RANKED);
      Collections.shuffle(shuffled, random);

      assertThat(Ranking.ranked(shuffled)).isEqualTo(RANKED);
    }
  }

  @Test
  void theLastBitsOfASolvedFigureDecideNothing() {
    Finding first =
        finding(Outcome.WARNING, Consequence.STOPS, 0.1, Origin.STANDARD, Station.PACK, "a/a", "a");
    Finding second =
        finding(
            Outcome.WARNING,
            Consequence.STOPS,
            0.1 + 1e-12,
            Origin.STANDARD,
            Station.SOUND,
            "a/a",
            "a");

    assertThat(Ranking.ranked(List.of(second, first))).containsExactly(first, second);
  }

  private static Finding finding(
      Outcome outcome,
      Consequence consequence,
      double past,
      Origin origin,
      Station station,
      String rule,
      String headline) {
    return new Finding(
        rule,
        outcome,
        consequence,
        new At(station, "x", "x"),
        headline,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        past,
        List.of(),
        "",
        List.of(),
        "",
        "",
        List.of(),
        List.of(),
        origin,
        false);
  }
}
