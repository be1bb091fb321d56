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
  private static final double ROUNDED = 1e9;
  private static final List<String> SIDES = List.of("length_mm", "width_mm", "height_mm");

  private final Order order;
  private final Space space;
  private final double[][] price;
  private final double[][] litres;
  private final LongestRun longest;
  private final LongestRun.Mark[][] hours;

  Measure(Order order, Space space, Trials trials) {
    this.order = order;
    this.space = space;
    this.longest = new LongestRun(space, trials);
    this.price = new double[space.slots().size()][];
    this.litres = new double[price.length][];
    this.hours = new LongestRun.Mark[price.length][];
    for (int s = 0; s < price.length; s++) {
      List<Part> choices = space.slots().get(s).choices();
      price[s] = choices.stream().mapToDouble(Measure::price).toArray();
      litres[s] = choices.stream().mapToDouble(Measure::litres).toArray();
    }
  }

  /** A part's price; not a number where it is not stated. */
  private static double price(Part part) {
    Double price = part.numbers().get("price_each");
    return price == null ? Double.NaN : rounded(price);
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
    return rounded(cubicMetres / LITRE);
  }

  /** The combination of a cell that the order prefers by the parts alone. */
  int[] point(BitSet[] cell) {
    return order == Order.RUN_TIME ? cheapest(among(cell, run(cell))) : cheapest(among(cell));
  }

  /** The best rank that a combination of a cell may have, if it has at least so many warnings. */
  Rank bound(BitSet[] cell, int warnings) {
    LongestRun.Mark run = order == Order.RUN_TIME ? run(cell) : LongestRun.Mark.ANY;
    BitSet[] among = order == Order.RUN_TIME ? among(cell, run) : among(cell);
    return rank(cheapest(among), run, warnings);
  }

  /** The rank of one combination that works. */
  Rank rank(int[] point, Found found) {
    LongestRun.Mark run =
        found.mostHours().isPresent()
            ? LongestRun.Mark.of(found.mostHours().getAsDouble())
            : LongestRun.Mark.UNKNOWN;
    return rank(point, run, found.warnings());
  }

  private Rank rank(int[] point, LongestRun.Mark run, int warnings) {
    double[] cost = sum(price, point);
    double[] marks =
        switch (order) {
          case WARNINGS -> new double[] {warnings, cost[0], cost[1]};
          case COST -> new double[] {cost[0], cost[1], warnings};
          case SIZE -> {
            double[] size = sum(litres, point);
            yield new double[] {size[0], size[1], cost[0], cost[1], warnings};
          }
          case RUN_TIME ->
              new double[] {run.unknown(), run.negativeHours(), cost[0], cost[1], warnings};
        };
    return new Rank(marks, point);
  }

  /** The choices of which a best combination of a cell can be made: by size the smallest ones. */
  private BitSet[] among(BitSet[] cell) {
    if (order != Order.SIZE) {
      return cell;
    }
    BitSet[] among = new BitSet[cell.length];
    for (int s = 0; s < among.length; s++) {
      double least = litres[s][least(litres[s], cell[s])];
      among[s] = new BitSet();
      for (int i = cell[s].nextSetBit(0); i >= 0; i = cell[s].nextSetBit(i + 1)) {
        among[s].set(i, Double.compare(litres[s][i], least) == 0);
      }
    }
    return among;
  }

  /** By run time those that let it run so long, whatever else there is. */
  private BitSet[] among(BitSet[] cell, LongestRun.Mark run) {
    BitSet[] among = new BitSet[cell.length];
    for (int s = 0; s < among.length; s++) {
      LongestRun.Mark[] marks = hours(s);
      among[s] = new BitSet();
      for (int i = cell[s].nextSetBit(0); i >= 0; i = cell[s].nextSetBit(i + 1)) {
        among[s].set(i, marks[i].compareTo(run) <= 0);
      }
    }
    return among;
  }

  /** The longest run of a cell: no longer than that of the best choice for any one place. */
  private LongestRun.Mark run(BitSet[] cell) {
    LongestRun.Mark run = longest.of(cell);
    for (int s = 0; s < cell.length; s++) {
      LongestRun.Mark[] marks = hours(s);
      LongestRun.Mark best = marks[cell[s].nextSetBit(0)];
      for (int i = cell[s].nextSetBit(0); i >= 0; i = cell[s].nextSetBit(i + 1)) {
        best = marks[i].compareTo(best) < 0 ? marks[i] : best;
      }
      run = best.compareTo(run) > 0 ? best : run;
    }
    return run;
  }

  /** For each choice, the longest run with it and anything else. */
  private synchronized LongestRun.Mark[] hours(int slot) {
    if (hours[slot] == null) {
      hours[slot] = new LongestRun.Mark[price[slot].length];
      for (int i = 0; i < hours[slot].length; i++) {
        BitSet[] cell = space.all();
        cell[slot].clear();
        cell[slot].set(i);
        hours[slot][i] = longest.of(cell);
      }
    }
    return hours[slot];
  }

  /** The cheapest of each set, the first of equals. */
  private int[] cheapest(BitSet[] among) {
    int[] point = new int[among.length];
    for (int s = 0; s < point.length; s++) {
      point[s] = least(price[s], among[s]);
    }
    return point;
  }

  /** The choice of a set with the least value; what has none comes last. */
  private static int least(double[] values, BitSet set) {
    int least = set.nextSetBit(0);
    for (int i = least; i >= 0; i = set.nextSetBit(i + 1)) {
      least = Double.compare(values[i], values[least]) < 0 ? i : least;
    }
    return least;
  }

  Found found(int[] point, List<Object> facts, List<Verdict> verdicts) {
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
        whole(sum(price, point)),
        run,
        most,
        whole(sum(litres, point)),
        count(verdicts, Outcome.WARNING),
        count(verdicts, Outcome.CANNOT_TELL));
  }

  private static OptionalDouble whole(double[] sum) {
    return sum[0] == 0 ? OptionalDouble.of(sum[1]) : OptionalDouble.empty();
  }

  static int count(List<Verdict> verdicts, Outcome outcome) {
    return (int) verdicts.stream().filter(v -> v.outcome() == outcome).count();
  }

  /** How many places have no value, and the sum of the others. */
  private static double[] sum(double[][] values, int[] point) {
    double unknown = 0;
    double sum = 0;
    for (int s = 0; s < point.length; s++) {
      double value = values[s][point[s]];
      unknown += Double.isNaN(value) ? 1 : 0;
      sum += Double.isNaN(value) ? 0 : value;
    }
    return new double[] {unknown, rounded(sum)};
  }

  /** So far that it makes no difference in which order parts are added up. */
  private static double rounded(double value) {
    return Math.rint(value * ROUNDED) / ROUNDED;
  }

  /** The words of a rule at a place, to tell warnings apart. */
  static Map.Entry<String, String> key(Verdict verdict) {
    return Map.entry(verdict.rule(), verdict.at().name());
  }
}
