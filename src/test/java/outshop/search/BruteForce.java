package outshop.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import outshop.catalogue.Part;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.figures.RunTime;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.rules.RuleEngine;
import outshop.units.Amount;

/** Checks every combination in full, one after the other, and ranks what works by itself. */
final class BruteForce {
  private BruteForce() {}

  /** A combination that works, as the full check sees it. */
  record Works(List<Part> parts, int warnings, OptionalDouble mostHours) {
    double[] cost() {
      double unpriced = 0;
      double sum = 0;
      for (Part part : parts) {
        Double price = part.numbers().get("price_each");
        unpriced += price == null ? 1 : 0;
        sum += price == null ? 0 : price;
      }
      return new double[] {unpriced, sum};
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

  static List<Works> all(RuleEngine engine, Space space) {
    int total = space.size().intValueExact();
    ClassLoader loader = Thread.currentThread().getContextClassLoader();
    return IntStream.range(0, total)
        .parallel()
        .mapToObj(
            n -> {
              // The rule engine finds its parts by the thread's loader; a pool's threads have
              // another.
              Thread.currentThread().setContextClassLoader(loader);
              return one(engine, space, point(space, n));
            })
        .flatMap(Optional::stream)
        .toList();
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

  static Optional<Works> one(RuleEngine engine, Space space, int[] point) {
    List<Part> parts = space.parts(point);
    List<Object> facts = Facts.of(Bench.of(space.plan(parts), space.problems()));
    List<Finding> findings = engine.run(facts);
    if (findings.stream().anyMatch(f -> f.outcome() == Outcome.VIOLATION)) {
      return Optional.empty();
    }
    OptionalDouble hours = OptionalDouble.empty();
    for (Object fact : facts) {
      if (fact instanceof RunTime r && r.hours() instanceof Amount.Known k) {
        hours = OptionalDouble.of(Math.rint(k.high() * 1e6) / 1e6);
      }
    }
    int warnings = (int) findings.stream().filter(f -> f.outcome() == Outcome.WARNING).count();
    return Optional.of(new Works(parts, warnings, hours));
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
