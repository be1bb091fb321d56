package outshop.search;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import outshop.catalogue.Columns;
import outshop.catalogue.Part;
import outshop.figures.RunTime;
import outshop.findings.Outcome;
import outshop.rules.Verdict;
import outshop.units.Amount;

/** Measures combinations by an order, and cells by the best that may be in them. */
final class Measure {
  private static final double LITRE = 1e-3;
  private static final List<String> SIDES = List.of("length_mm", "width_mm", "height_mm");

  private final Order order;
  private final Trials trials;
  private final Space space;
  private final double[][] price;
  private final double[][] litres;
  private double[][] hours;

  Measure(Order order, Space space, Trials trials) {
    this.order = order;
    this.space = space;
    this.trials = trials;
    this.price = new double[space.slots().size()][];
    this.litres = new double[price.length][];
    for (int s = 0; s < price.length; s++) {
      List<Part> choices = space.slots().get(s).choices();
      price[s] = choices.stream().mapToDouble(Measure::price).toArray();
      litres[s] = choices.stream().mapToDouble(Measure::litres).toArray();
    }
  }

  /** A part's price; not a number where it is not stated. */
  private static double price(Part part) {
    Double price = part.numbers().get("price_each");
    return price == null ? Double.NaN : price;
  }

  /** The room a part's box takes; nothing for kinds that have no size. */
  private static double litres(Part part) {
    if (SIDES.stream().anyMatch(side -> Columns.find(part.kind(), side).isEmpty())) {
      return 0;
    }
    double cubicMetres = 1;
    for (String side : SIDES) {
      cubicMetres *= part.numbers().getOrDefault(side, Double.NaN);
    }
    return cubicMetres / LITRE;
  }

  /** The choice of each set that the order prefers by itself, the cheapest of these. */
  int[] point(BitSet[] cell) {
    int[] point = new int[cell.length];
    for (int s = 0; s < point.length; s++) {
      double[] by =
          switch (order) {
            case SIZE -> litres[s];
            case RUN_TIME -> hours(s);
            case WARNINGS, COST -> price[s];
          };
      int best = cell[s].nextSetBit(0);
      for (int i = best; i >= 0; i = cell[s].nextSetBit(i + 1)) {
        int compared = Double.compare(by[i], by[best]);
        boolean cheaper = compared == 0 && Double.compare(price[s][i], price[s][best]) < 0;
        best = compared < 0 || cheaper ? i : best;
      }
      point[s] = best;
    }
    return point;
  }

  /** For each choice, the negative of the longest run with it and anything else. */
  private synchronized double[] hours(int slot) {
    if (hours == null) {
      hours = new double[price.length][];
    }
    if (hours[slot] == null) {
      hours[slot] = new double[price[slot].length];
      for (int i = 0; i < hours[slot].length; i++) {
        BitSet[] cell = space.all();
        cell[slot].clear();
        cell[slot].set(i);
        hours[slot][i] = -longest(cell);
      }
    }
    return hours[slot];
  }

  private double longest(BitSet[] cell) {
    return trials.hours(cell) instanceof Amount.Known k
        ? rounded(k.high())
        : Double.POSITIVE_INFINITY;
  }

  /** So far that the last bits of a solved figure cannot turn the order. */
  private static double rounded(double hours) {
    return Math.rint(hours * 1e6) / 1e6;
  }

  /** The best rank that a combination of a cell may have, if it has at least so many warnings. */
  Rank bound(BitSet[] cell, int warnings) {
    int[] first = new int[cell.length];
    for (int s = 0; s < first.length; s++) {
      first[s] = cell[s].nextSetBit(0);
    }
    double[] cost = sum(price, cell);
    return switch (order) {
      case WARNINGS -> new Rank(new double[] {warnings, cost[0], cost[1]}, first);
      case COST -> new Rank(new double[] {cost[0], cost[1], warnings}, first);
      case SIZE -> {
        double[] size = sum(litres, cell);
        yield new Rank(new double[] {size[0], size[1], cost[0], cost[1], warnings}, first);
      }
      case RUN_TIME -> {
        yield new Rank(new double[] {0, -longest(cell), cost[0], cost[1], warnings}, first);
      }
    };
  }

  /** The rank of one combination that works. */
  Rank rank(int[] point, Found found) {
    BitSet[] cell = Region.single(point);
    double[] cost = sum(price, cell);
    return switch (order) {
      case RUN_TIME ->
          new Rank(
              new double[] {
                found.mostHours().isPresent() ? 0 : 1,
                found.mostHours().isPresent() ? -rounded(found.mostHours().getAsDouble()) : 0,
                cost[0],
                cost[1],
                found.warnings()
              },
              point);
      case WARNINGS -> new Rank(new double[] {found.warnings(), cost[0], cost[1]}, point);
      case COST, SIZE -> bound(cell, found.warnings());
    };
  }

  Found found(int[] point, List<Object> facts, List<Verdict> verdicts) {
    BitSet[] cell = Region.single(point);
    OptionalDouble run = OptionalDouble.empty();
    OptionalDouble most = OptionalDouble.empty();
    for (Object fact : facts) {
      if (fact instanceof RunTime r && r.hours() instanceof Amount.Known k) {
        run = OptionalDouble.of(k.value());
        most = OptionalDouble.of(k.high());
      }
    }
    return new Found(
        space.parts(point),
        whole(sum(price, cell)),
        run,
        most,
        whole(sum(litres, cell)),
        count(verdicts, Outcome.WARNING),
        count(verdicts, Outcome.CANNOT_TELL));
  }

  private static OptionalDouble whole(double[] sum) {
    return sum[0] == 0 ? OptionalDouble.of(sum[1]) : OptionalDouble.empty();
  }

  static int count(List<Verdict> verdicts, Outcome outcome) {
    return (int) verdicts.stream().filter(v -> v.outcome() == outcome).count();
  }

  /** How many places have no choice with a value, and the least sum of the others. */
  private static double[] sum(double[][] values, BitSet[] cell) {
    double unknown = 0;
    double sum = 0;
    for (int s = 0; s < cell.length; s++) {
      double least = Double.NaN;
      for (int i = cell[s].nextSetBit(0); i >= 0; i = cell[s].nextSetBit(i + 1)) {
        least = Double.compare(values[s][i], least) < 0 ? values[s][i] : least;
      }
      unknown += Double.isNaN(least) ? 1 : 0;
      sum += Double.isNaN(least) ? 0 : least;
    }
    return new double[] {unknown, sum};
  }

  /** The words of a rule at a place, to tell warnings apart. */
  static Map.Entry<String, String> key(Verdict verdict) {
    return Map.entry(verdict.rule(), verdict.at().name());
  }
}
