package outshop.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.catalogue.Part;
import outshop.rules.RuleEngine;
import outshop.rules.Verdict;

/** What the search finds, what it says where it finds nothing, and that it can be stopped. */
final class SearchTest {
  private static final RuleEngine ENGINE = RuleEngine.load();
  private static final int MANY = 200;
  private static final int LISTED = 1000;

  /** A space in which some hundred combinations work, for other reasons not the rest. */
  private static Space small() {
    return Generated.space(
        2, Map.of("pack", 6, "charger", 8, "plug", 5, "jack", 6, "handset", 8), 0.06);
  }

  @Test
  void theFirstFewAreTheFirstOfAll() {
    Space space = small();
    List<List<String>> all = ids(answer(space, Order.COST, MANY, 1));

    assertThat(ids(answer(space, Order.COST, 3, 2))).isEqualTo(all.subList(0, 3));
  }

  /** Catalogues of so many parts for each of ten places that nobody can try all combinations. */
  private record Large(long seed, int each, double changed) {}

  @TestFactory
  Stream<DynamicTest> whatRandomSearchFindsIsInTheAnswer() {
    return Stream.of(new Large(21, 40, 0.02), new Large(22, 12, 0.06), new Large(23, 100, 0.05))
        .map(
            large -> DynamicTest.dynamicTest(large.toString(), () -> samplesAreInTheAnswer(large)));
  }

  private static void samplesAreInTheAnswer(Large large) {
    Space space =
        Generated.space(large.seed(), Generated.everywhere(large.each()), large.changed());
    Trials trials = new Trials(ENGINE, space);
    Set<List<Part>> found = new LinkedHashSet<>();
    for (int[] point : sampled(space, trials, 40)) {
      found.add(space.parts(point));
    }
    assertThat(found).as("random search finds some that work").hasSizeGreaterThan(10);

    Search search = new Search(ENGINE, space);
    Answer best =
        search.run(new Search.Asked(Order.COST, 5, false, 2, Stop.whenAsked()), Watched.NOBODY);
    search.run(new Search.Asked(Order.COST, 1, true, 2, Stop.after(5)), Watched.NOBODY);

    assertThat(best.bestIsSure()).isTrue();
    assertThat(best.best()).hasSize(5);
    Measure measure = new Measure(Order.COST, space, trials);
    Rank last = measure.bound(cell(space, best.best().get(4).parts()), 0);
    for (List<Part> parts : found) {
      BitSet[] cell = cell(space, parts);
      List<String> ids = parts.stream().map(Part::id).toList();
      assertThat(search.works(measure.point(cell))).as("%s works", ids).isTrue();
      boolean listed = best.best().stream().anyMatch(f -> f.parts().equals(parts));
      assertThat(listed || measure.bound(cell, 0).compareTo(last) > 0)
          .as("%s comes before the last of the best", ids)
          .isTrue();
    }
  }

  /** What random search finds that is cheap enough is on the list of the cheapest. */
  @Test
  void whatRandomSearchFindsCheapIsOnTheList() {
    Space space = Generated.space(22, Generated.everywhere(12), 0.06);
    Trials trials = new Trials(ENGINE, space);
    Measure measure = new Measure(Order.COST, space, trials);
    Set<List<Part>> found = new LinkedHashSet<>();
    Random random = new Random(9);
    for (int[] point : sampled(space, trials, 20)) {
      found.add(space.parts(cheapened(point, space, trials, measure, random)));
    }

    Answer answer =
        new Search(ENGINE, space)
            .run(new Search.Asked(Order.COST, LISTED, false, 2, Stop.whenAsked()), Watched.NOBODY);

    assertThat(answer.bestIsSure()).isTrue();
    assertThat(answer.best()).hasSize(LISTED);
    List<List<Part>> listed = answer.best().stream().map(Found::parts).toList();
    Rank last = measure.bound(cell(space, listed.get(LISTED - 1)), 0);
    List<List<Part>> cheap =
        found.stream()
            .filter(parts -> measure.bound(cell(space, parts), 0).compareTo(last) < 0)
            .toList();
    assertThat(cheap).as("cheap enough").hasSizeGreaterThan(3).isSubsetOf(listed);
  }

  /** Swaps parts at random for cheaper ones, as long as it works. */
  private static int[] cheapened(
      int[] from, Space space, Trials trials, Measure measure, Random random) {
    int[] point = from.clone();
    for (int step = 0; step < 250; step++) {
      int[] other = point.clone();
      int s = random.nextInt(point.length);
      other[s] = random.nextInt(space.slots().get(s).choices().size());
      boolean cheaper =
          measure.bound(Region.single(other), 0).compareTo(measure.bound(Region.single(point), 0))
              < 0;
      if (cheaper && violations(trials, other) == 0) {
        point = other;
      }
    }
    return point;
  }

  private static BitSet[] cell(Space space, List<Part> parts) {
    int[] point = new int[parts.size()];
    for (int s = 0; s < point.length; s++) {
      point[s] = space.slots().get(s).choices().indexOf(parts.get(s));
    }
    return Region.single(point);
  }

  /** Combinations that work, found by swapping parts at random for ones with fewer violations. */
  private static List<int[]> sampled(Space space, Trials trials, int tries) {
    Random random = new Random(5);
    List<int[]> found = new ArrayList<>();
    for (int n = 0; n < tries; n++) {
      int[] point = new int[space.slots().size()];
      for (int s = 0; s < point.length; s++) {
        point[s] = random.nextInt(space.slots().get(s).choices().size());
      }
      long fewest = violations(trials, point);
      for (int step = 0; step < 40 && fewest > 0; step++) {
        int s = random.nextInt(point.length);
        int[] other = point.clone();
        other[s] = random.nextInt(space.slots().get(s).choices().size());
        long count = violations(trials, other);
        if (count <= fewest) {
          fewest = count;
          point = other;
        }
      }
      if (fewest == 0) {
        found.add(point);
      }
    }
    return found;
  }

  private static long violations(Trials trials, int[] point) {
    return trials.check(point).stream().filter(Verdict::isViolation).count();
  }

  @Test
  void whereNothingWorksItSaysWhatStandsInTheWay() {
    Space space = Generated.space(4, Map.of("pack", 4, "receiver", 4), 0);
    List<Slot> slots = new ArrayList<>(space.slots());
    int receiver = slots.get(0).name().equals("receiver") ? 0 : 1;
    List<Part> weak = new ArrayList<>();
    for (Part part : slots.get(receiver).choices()) {
      Map<String, Double> numbers = new java.util.HashMap<>(part.numbers());
      numbers.put("input_max_volts", 8.0);
      weak.add(
          new Part(
              part.kind(),
              part.id(),
              numbers,
              part.words(),
              Map.of(),
              part.origin(),
              part.place()));
    }
    slots.set(receiver, new Slot(slots.get(receiver).open(), weak, false));

    Answer answer = answer(new Space(space.plan(), List.of(), slots), Order.COST, 3, 1);

    assertThat(answer.isComplete()).isTrue();
    assertThat(answer.works().signum()).isZero();
    Hindrance hindrance = answer.hindrance().orElseThrow();
    assertThat(hindrance.byRule())
        .containsEntry("voltage/receiver-over-maximum", hindrance.drawn());
    assertThat(hindrance.violations())
        .anyMatch(f -> f.rule().equals("voltage/receiver-over-maximum"));
  }

  @Test
  void aSearchThatIsStoppedSaysSo() {
    Stop stop = Stop.whenAsked();
    stop.ask();

    Answer answer =
        new Search(ENGINE, small())
            .run(new Search.Asked(Order.COST, 3, true, 2, stop), Watched.NOBODY);

    assertThat(answer.isComplete()).isFalse();
    assertThat(answer.bestIsSure()).isFalse();
    assertThat(answer.best()).isEmpty();
  }

  private static Answer answer(Space space, Order order, int best, int threads) {
    return new Search(ENGINE, space)
        .run(new Search.Asked(order, best, true, threads, Stop.whenAsked()), Watched.NOBODY);
  }

  private static List<List<String>> ids(Answer answer) {
    return answer.best().stream().map(f -> f.parts().stream().map(Part::id).toList()).toList();
  }
}
