package outshop.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Map;
import java.util.stream.Stream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import outshop.findings.Outcome;
import outshop.rules.RuleEngine;
import outshop.rules.Verdict;

/**
 * A general constraint solver that is given which pairs of parts cannot go together counts what the
 * search counts, where no more than two parts ever decide; elsewhere it counts no less.
 */
final class PairsTest {
  private static final RuleEngine ENGINE = RuleEngine.load();

  private record Case(Map<String, Integer> sizes, boolean pairsDecide) {}

  @TestFactory
  Stream<DynamicTest> aGeneralSolverAgrees() {
    return Stream.of(
            new Case(Map.of("handset", 9, "receiver", 9), true),
            new Case(Map.of("charger", 12, "plug", 8), true),
            new Case(Map.of("plug", 5, "jack", 6, "handset", 6), true),
            new Case(Map.of("pack", 6, "receiver", 6, "handset", 5, "speaker", 5), false))
        .map(c -> DynamicTest.dynamicTest(c.sizes().keySet().toString(), () -> agree(c)));
  }

  private static void agree(Case one) {
    Space space = Generated.space(31, one.sizes(), 0.06);
    Answer answer =
        new Search(ENGINE, space)
            .run(new Search.Asked(Order.COST, 1, true, 1, Stop.whenAsked()), Watched.NOBODY);
    assertThat(answer.isComplete()).isTrue();

    long counted = counted(space);

    assertThat(counted).isPositive().isLessThan(space.size().longValueExact());
    if (one.pairsDecide()) {
      assertThat(answer.works().longValueExact()).isEqualTo(counted);
    } else {
      assertThat(answer.works().longValueExact()).isLessThanOrEqualTo(counted);
    }
  }

  private static long counted(Space space) {
    Trials trials = new Trials(ENGINE, space);
    Model model = new Model();
    IntVar[] places = new IntVar[space.slots().size()];
    for (int s = 0; s < places.length; s++) {
      places[s] = model.intVar("place " + s, 0, space.slots().get(s).choices().size() - 1);
    }
    for (int s = 0; s < places.length; s++) {
      for (int t = s + 1; t < places.length; t++) {
        Tuples allowed = new Tuples(true);
        for (int i = 0; i < space.slots().get(s).choices().size(); i++) {
          for (int j = 0; j < space.slots().get(t).choices().size(); j++) {
            if (!cannotBe(trials, space, s, i, t, j)) {
              allowed.add(i, j);
            }
          }
        }
        model.table(places[s], places[t], allowed).post();
      }
    }
    long count = 0;
    while (model.getSolver().solve()) {
      count++;
    }
    return count;
  }

  /** Whether two parts cannot go together, whatever stands in the other places. */
  private static boolean cannotBe(Trials trials, Space space, int s, int i, int t, int j) {
    BitSet[] cell = space.all();
    cell[s] = new BitSet();
    cell[s].set(i);
    cell[t] = new BitSet();
    cell[t].set(j);
    for (Blend.End end : Blend.End.values()) {
      boolean sure =
          trials.look(cell, end).stream().anyMatch(v -> v.isViolation() && isSure(v, space));
      if (!sure) {
        return false;
      }
    }
    return true;
  }

  /** With nothing else open the check itself is the answer; else it must stand at every end. */
  private static boolean isSure(Verdict verdict, Space space) {
    return space.slots().size() == 2 || verdict.kindest() == Outcome.VIOLATION;
  }
}
