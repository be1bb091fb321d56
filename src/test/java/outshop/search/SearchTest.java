package outshop.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import outshop.catalogue.Part;
import outshop.rules.RuleEngine;
import outshop.rules.Verdict;

/** What the search says is what checking every combination says. */
final class SearchTest {
  private static final RuleEngine ENGINE = RuleEngine.load();
  private static final int MANY = 200;

  private record Case(
      String name, long seed, Map<String, Integer> sizes, double changed, Order... orders) {}

  private static final List<Case> SMALL =
      List.of(
          new Case(
              "power path",
              1,
              Map.of("pack", 6, "fuse", 5, "switch", 5, "receiver", 8, "decoder", 9),
              0.04,
              Order.COST,
              Order.WARNINGS),
          new Case(
              "charging and control",
              2,
              Map.of("pack", 6, "charger", 8, "plug", 5, "jack", 6, "handset", 8),
              0.06,
              Order.WARNINGS,
              Order.COST),
          new Case(
              "sound and room",
              3,
              Map.of("pack", 6, "receiver", 8, "decoder", 15, "speaker", 15),
              0.05,
              Order.SIZE,
              Order.RUN_TIME));

  private static final List<Case> BIG =
      List.of(
          new Case(
              "power path",
              11,
              Map.of("pack", 10, "fuse", 8, "switch", 8, "receiver", 13, "decoder", 13),
              0.04,
              Order.COST,
              Order.WARNINGS),
          new Case(
              "charging and control",
              12,
              Map.of("pack", 10, "charger", 12, "plug", 8, "jack", 9, "handset", 12),
              0.06,
              Order.WARNINGS,
              Order.COST),
          new Case(
              "sound and room",
              13,
              Map.of("pack", 12, "receiver", 16, "decoder", 23, "speaker", 23),
              0.05,
              Order.SIZE,
              Order.RUN_TIME));

  @TestFactory
  Stream<DynamicTest> theAnswerIsThatOfBruteForce() {
    return SMALL.stream()
        .map(c -> DynamicTest.dynamicTest(c.name(), () -> equalsBruteForce(c, 10_000)));
  }

  /** Takes minutes: with {@code -Doutshop.choose.brute=true}. */
  @TestFactory
  @EnabledIfSystemProperty(named = "outshop.choose.brute", matches = "true")
  Stream<DynamicTest> theAnswerIsThatOfBruteForceOnLargerCatalogues() {
    return BIG.stream()
        .map(c -> DynamicTest.dynamicTest(c.name(), () -> equalsBruteForce(c, 100_000)));
  }

  private static void equalsBruteForce(Case one, int least) {
    Space space = Generated.space(one.seed(), one.sizes(), one.changed());
    assertThat(space.size().intValueExact()).isGreaterThanOrEqualTo(least);
    List<BruteForce.Works> works = BruteForce.all(ENGINE, space);
    assertThat(works).as("something works, and something does not").isNotEmpty();
    assertThat(works.size()).isLessThan(space.size().intValueExact());

    for (Order order : one.orders()) {
      Answer answer = answer(space, order, MANY, 1 + order.ordinal() % 2);

      assertThat(answer.isComplete()).isTrue();
      assertThat(answer.bestIsSure()).isTrue();
      assertThat(answer.works().intValueExact()).as(order.word()).isEqualTo(works.size());
      List<List<String>> ranked = BruteForce.ranked(works, order);
      assertThat(ids(answer))
          .as(order.word())
          .isEqualTo(ranked.subList(0, Math.min(MANY, ranked.size())));
    }
  }

  @Test
  void theFirstFewAreTheFirstOfAll() {
    Case one = SMALL.get(1);
    Space space = Generated.space(one.seed(), one.sizes(), one.changed());
    List<List<String>> all = ids(answer(space, Order.COST, MANY, 1));

    assertThat(ids(answer(space, Order.COST, 3, 2))).isEqualTo(all.subList(0, 3));
  }

  @Test
  void nothingThatWorksIsRuledOutInALargeCatalogue() {
    Map<String, Integer> sizes = new java.util.TreeMap<>();
    for (String name :
        List.of(
            "pack",
            "charger",
            "plug",
            "jack",
            "switch",
            "fuse",
            "receiver",
            "handset",
            "decoder",
            "speaker")) {
      sizes.put(name, 40);
    }
    Space space = Generated.space(21, sizes, 0.02);
    Trials trials = new Trials(ENGINE, space);
    Region region = new Region(space, trials);
    BestFirst first = new BestFirst(space, region, trials, Order.COST, Stop.after(20));
    first.run(5);
    assertThat(region.boxes().size()).as("it learned something").isPositive();

    List<int[]> found = sampled(space, trials, 60);
    assertThat(found).as("random search finds some that work").hasSizeGreaterThan(5);
    for (int[] point : found) {
      assertThat(region.boxes().ruledOut(point, Region.single(point)))
          .as("%s works, and is ruled out", space.parts(point).stream().map(Part::id).toList())
          .isEmpty();
    }
    if (first.isComplete()) {
      Measure measure = new Measure(Order.COST, space, trials);
      Rank last = measure.bound(cell(space, first.best().get(4)), 0);
      for (int[] point : found) {
        boolean listed = first.best().stream().anyMatch(f -> f.parts().equals(space.parts(point)));
        assertThat(listed || measure.bound(Region.single(point), 0).compareTo(last) > 0).isTrue();
      }
    }
  }

  private static java.util.BitSet[] cell(Space space, Found found) {
    int[] point = new int[found.parts().size()];
    for (int s = 0; s < point.length; s++) {
      point[s] = space.slots().get(s).choices().indexOf(found.parts().get(s));
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
    Case one = SMALL.get(0);
    Space space = Generated.space(one.seed(), one.sizes(), one.changed());
    Stop stop = Stop.whenAsked();
    stop.ask();

    Answer answer =
        new Search(ENGINE, space)
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
