package outshop.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import outshop.catalogue.Part;
import outshop.rules.RuleEngine;

/** What the search says is what checking every combination says. */
final class EveryCombinationTest {
  private static final RuleEngine ENGINE = RuleEngine.load();
  private static final int MANY = 200;
  private static final AtomicBoolean LEFT_OUT_PRINTED = new AtomicBoolean();

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
          new Case("a little of everything", 31, fewEverywhere(), 0.1, Order.values()),
          new Case(
              "power path",
              12,
              Map.of("pack", 10, "fuse", 8, "switch", 8, "receiver", 13, "decoder", 13),
              0.1,
              Order.values()),
          new Case(
              "charging and control",
              16,
              Map.of("pack", 10, "charger", 12, "plug", 8, "jack", 9, "handset", 12),
              0.03,
              Order.values()),
          new Case(
              "sound and room",
              16,
              Map.of("pack", 12, "receiver", 16, "decoder", 23, "speaker", 23),
              0.08,
              Order.values()));

  private static Map<String, Integer> fewEverywhere() {
    Map<String, Integer> sizes = Generated.everywhere(3);
    sizes.put("pack", 4);
    sizes.put("receiver", 4);
    return sizes;
  }

  @TestFactory
  Stream<DynamicTest> ofTenThousand() {
    return SMALL.stream().map(c -> DynamicTest.dynamicTest(c.name(), () -> compare(c, 10_000, 3)));
  }

  @Test
  void ofAHundredThousand() {
    compare(BIG.get(0), 100_000, 8);
  }

  /** More than a minute: with {@code CI=true}, or {@code -Doutshop.choose.brute=true}. */
  @TestFactory
  Stream<DynamicTest> ofThreeTimesAHundredThousandMore() {
    return BIG.subList(1, BIG.size()).stream()
        .map(
            c ->
                DynamicTest.dynamicTest(
                    c.name(),
                    () -> {
                      takeTime();
                      compare(c, 100_000, 8);
                    }));
  }

  /** Leaves the long ones out on a machine where somebody waits, and says so. */
  private static void takeTime() {
    boolean asked =
        "true".equals(System.getenv("CI")) || Boolean.getBoolean("outshop.choose.brute");
    String leftOut =
        "choosing is compared with checking each of 100,000 combinations for one catalogue only;"
            + " CI=true or -Doutshop.choose.brute=true takes three more, and a minute or two";
    if (!asked && LEFT_OUT_PRINTED.compareAndSet(false, true)) {
      System.out.println(leftOut);
    }
    assumeThat(asked).as(leftOut).isTrue();
  }

  /**
   * Compares all of it.
   *
   * @param least how many combinations there must be
   * @param rules how many rules at least must rule something out
   */
  private static void compare(Case one, int least, int rules) {
    Space space = Generated.space(one.seed(), one.sizes(), one.changed());
    int total = space.size().intValueExact();
    assertThat(total).isGreaterThanOrEqualTo(least);
    long began = System.nanoTime();
    BruteForce brute = new BruteForce(ENGINE, space);
    List<BruteForce.Works> works = brute.all();
    double seconds = (System.nanoTime() - began) / 1e9;
    assertThat(works).as("something works").hasSizeGreaterThan(MANY);
    assertThat(works.size()).as("something does not").isLessThanOrEqualTo(total / 2);
    assertThat(brute.ruledOut()).as("for different reasons").hasSizeGreaterThanOrEqualTo(rules);
    System.out.printf(
        Locale.ROOT,
        "%s: %,d combinations checked in %.0f s, %,d a second; %,d work; ruled out of %,d: %s%n",
        one.name(),
        total,
        seconds,
        Math.round(total / seconds),
        works.size(),
        total / BruteForce.WHOLE_ONE_OF,
        brute.ruledOut());

    for (Order order : one.orders()) {
      Search search = new Search(ENGINE, space);
      Answer answer =
          search.run(
              new Search.Asked(order, MANY, true, 1 + order.ordinal() % 2, Stop.whenAsked()),
              Watched.NOBODY);

      assertThat(answer.isComplete()).isTrue();
      assertThat(answer.bestIsSure()).isTrue();
      assertThat(answer.works().intValueExact()).as(order.word()).isEqualTo(works.size());
      assertThat(ids(answer))
          .as(order.word())
          .isEqualTo(BruteForce.ranked(works, order).subList(0, MANY));
      if (order == one.orders()[0]) {
        eachIsJudgedAlike(space, search, works);
      }
    }
  }

  /** The search counts without naming them: what it learned must say the same of each. */
  private static void eachIsJudgedAlike(Space space, Search search, List<BruteForce.Works> works) {
    BitSet working = new BitSet();
    works.forEach(w -> working.set(w.number()));
    BitSet said = new BitSet();
    for (int number = 0; number < space.size().intValueExact(); number++) {
      said.set(number, search.works(BruteForce.point(space, number)));
    }
    assertThat(said).isEqualTo(working);
  }

  private static List<List<String>> ids(Answer answer) {
    return answer.best().stream().map(f -> f.parts().stream().map(Part::id).toList()).toList();
  }
}
