package outshop.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import outshop.catalogue.Part;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.figures.RunTime;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.plan.Fitted;
import outshop.rules.RuleEngine;
import outshop.rules.Verdict;
import outshop.units.Amount;

/**
 * Checks every combination, one after the other, and ranks what works by itself. It knows nothing
 * of what the search knows: no part stands for several, and nothing is carried over from one
 * combination to the next.
 *
 * <p>The check is the full one, piece by piece, until one piece's rules find a violation: then it
 * is settled that the combination does not work. Where none does, all facts together are given to
 * the rules once more, with their texts. {@link VerdictsTest} holds that the pieces one by one find
 * what all find together; it is tried here again for one combination out of {@value #WHOLE_ONE_OF}.
 */
final class BruteForce {
  static final int WHOLE_ONE_OF = 101;
  private static final int TIMED = 100;

  private final RuleEngine engine;
  private final Space space;
  private final List<List<Fitted>> fitted = new ArrayList<>();
  private final List<Integer> pieces;

  /** Which rules rule out how many of those that were checked whole as well. */
  private final Map<String, Integer> ruledOut = new TreeMap<>();

  BruteForce(RuleEngine engine, Space space) {
    this.engine = engine;
    this.space = space;
    for (Slot slot : space.slots()) {
      fitted.add(
          slot.choices().stream()
              .map(part -> new Fitted(slot.name(), part, slot.open().place()))
              .toList());
    }
    this.pieces = pieces();
  }

  /** A combination that works, as the full check sees it. */
  record Works(int number, List<Part> parts, int warnings, OptionalDouble mostHours) {
    double[] cost() {
      double unpriced = 0;
      double sum = 0;
      for (Part part : parts) {
        Double price = part.numbers().get("price_each");
        unpriced += price == null ? 1 : 0;
        sum += price == null ? 0 : price;
      }
      return new double[] {unpriced, Math.rint(sum * 1e6) / 1e6};
    }

    double[] room() {
      double unsized = 0;
      double sum = 0;
      for (Part part : parts) {
        boolean sized =
            switch (part.kind()) {
              case PACK, RECEIVER, DECODER, SPEAKER -> true;
              default -> false;
            };
        Double length = part.numbers().get("length_mm");
        Double width = part.numbers().get("width_mm");
        Double height = part.numbers().get("height_mm");
        boolean known = length != null && width != null && height != null;
        unsized += sized && !known ? 1 : 0;
        sum += sized && known ? length * width * height * 1000 : 0;
      }
      return new double[] {unsized, Math.rint(sum * 1e9) / 1e9};
    }

    List<String> ids() {
      return parts.stream().map(Part::id).toList();
    }
  }

  /** Every combination that works, by number; on all processors. */
  List<Works> all() {
    int total = space.size().intValueExact();
    ClassLoader loader = Thread.currentThread().getContextClassLoader();
    return IntStream.range(0, total)
        .parallel()
        .mapToObj(
            number -> {
              // The rule engine finds its parts by the thread's loader; a pool's threads have
              // another.
              Thread.currentThread().setContextClassLoader(loader);
              return one(number);
            })
        .flatMap(Optional::stream)
        .toList();
  }

  /** How many of the combinations that were checked whole as well each rule rules out. */
  synchronized Map<String, Integer> ruledOut() {
    return new TreeMap<>(ruledOut);
  }

  static int[] point(Space space, int number) {
    int[] point = new int[space.slots().size()];
    int rest = number;
    for (int s = 0; s < point.length; s++) {
      int size = space.slots().get(s).choices().size();
      point[s] = rest % size;
      rest /= size;
    }
    return point;
  }

  private Optional<Works> one(int number) {
    int[] point = point(space, number);
    Optional<Works> works = byPieces(number, point);
    if (number % WHOLE_ONE_OF == 0) {
      List<Object> facts =
          Facts.of(Bench.of(space.plan(space.parts(point)), List.copyOf(space.problems())));
      List<String> rules =
          engine.run(facts).stream()
              .filter(f -> f.outcome() == Outcome.VIOLATION)
              .map(Finding::rule)
              .distinct()
              .toList();
      if (rules.isEmpty() != works.isPresent()) {
        throw new AssertionError("the pieces disagree with the whole: " + space.parts(point));
      }
      note(rules);
    }
    return works;
  }

  private Optional<Works> byPieces(int number, int[] point) {
    Bench bench = bench(point);
    List<Object> facts = new ArrayList<>();
    for (int piece : pieces) {
      List<?> ofPiece = Facts.piece(bench, piece);
      if (engine.verdicts(ofPiece).stream().anyMatch(Verdict::isViolation)) {
        return Optional.empty();
      }
      facts.addAll(ofPiece);
    }
    return Optional.of(works(number, point, facts));
  }

  private Bench bench(int[] point) {
    List<Fitted> parts = new ArrayList<>();
    for (int s = 0; s < point.length; s++) {
      parts.add(fitted.get(s).get(point[s]));
    }
    return Bench.of(space.plan().with(parts), space.problems());
  }

  private synchronized void note(List<String> rules) {
    rules.forEach(rule -> ruledOut.merge(rule, 1, Integer::sum));
  }

  private Works works(int number, int[] point, List<Object> facts) {
    List<Finding> findings = engine.run(facts);
    int warnings = 0;
    for (Finding finding : findings) {
      if (finding.outcome() == Outcome.VIOLATION) {
        throw new AssertionError(
            finding.rule() + " finds in all what it does not find in its piece");
      }
      warnings += finding.outcome() == Outcome.WARNING ? 1 : 0;
    }
    OptionalDouble hours = OptionalDouble.empty();
    for (Object fact : facts) {
      if (fact instanceof RunTime r && r.hours() instanceof Amount.Known k) {
        hours = OptionalDouble.of(Math.rint(k.high() * 1e6) / 1e6);
      }
    }
    return new Works(number, space.parts(point), warnings, hours);
  }

  /** The pieces, first those that rule out most for their time. The order changes no answer. */
  private List<Integer> pieces() {
    double[] seconds = new double[Facts.pieces()];
    int[] hits = new int[Facts.pieces()];
    Random random = new Random(3);
    for (int n = 0; n < TIMED; n++) {
      Bench bench = bench(point(space, random.nextInt(space.size().intValueExact())));
      for (int piece = 0; piece < hits.length; piece++) {
        long began = System.nanoTime();
        List<Verdict> verdicts = engine.verdicts(Facts.piece(bench, piece));
        seconds[piece] += (System.nanoTime() - began) / 1e9;
        hits[piece] += verdicts.stream().anyMatch(Verdict::isViolation) ? 1 : 0;
      }
    }
    return IntStream.range(0, hits.length)
        .boxed()
        .sorted(Comparator.comparingDouble(piece -> seconds[piece] / (hits[piece] + 0.5)))
        .toList();
  }

  /** The ids in an order, the best first. */
  static List<List<String>> ranked(List<Works> works, Order order) {
    Comparator<Works> byCost =
        Comparator.comparingDouble((Works w) -> w.cost()[0]).thenComparingDouble(w -> w.cost()[1]);
    Comparator<Works> byOrder =
        switch (order) {
          case WARNINGS -> Comparator.comparingInt(Works::warnings);
          case COST -> byCost;
          case SIZE ->
              Comparator.comparingDouble((Works w) -> w.room()[0])
                  .thenComparingDouble(w -> w.room()[1]);
          case RUN_TIME ->
              Comparator.comparing((Works w) -> w.mostHours().isEmpty())
                  .thenComparingDouble(w -> -w.mostHours().orElse(0));
        };
    List<Works> sorted = new ArrayList<>(works);
    sorted.sort(
        byOrder
            .thenComparing(byCost)
            .thenComparingInt(Works::warnings)
            .thenComparing(w -> String.join(" ", w.ids())));
    return sorted.stream().map(Works::ids).toList();
  }
}
