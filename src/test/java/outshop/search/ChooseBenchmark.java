package outshop.search;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import outshop.render.terminal.ChoiceText;
import outshop.rules.RuleEngine;

/**
 * Measures the search over generated catalogues of growing size against brute force in the same
 * run, and writes the page about it. Arguments: the page, and how many seconds to count for.
 */
public final class ChooseBenchmark {
  private static final List<Integer> SIZES = List.of(100, 300, 1000, 3000);
  private static final List<String> PLACES =
      List.of(
          "charger",
          "decoder",
          "fuse",
          "handset",
          "jack",
          "pack",
          "plug",
          "receiver",
          "speaker",
          "switch");
  private static final int BEST = 10;
  private static final double MOST_SECONDS = 60;
  private static final double BRUTE_SECONDS = 5;

  private final RuleEngine engine = RuleEngine.load();
  private final double countSeconds;

  private record Row(
      int parts,
      BigInteger combinations,
      double bruteRate,
      double firstSeconds,
      double bestSeconds,
      boolean sure,
      Answer.Effort effort,
      BigInteger considered,
      BigInteger works,
      double countedSeconds,
      double megabytes) {}

  private ChooseBenchmark(double countSeconds) {
    this.countSeconds = countSeconds;
  }

  public static void main(String[] arguments) throws IOException {
    double seconds = arguments.length > 1 ? Double.parseDouble(arguments[1]) : 30;
    ChooseBenchmark benchmark = new ChooseBenchmark(seconds);
    benchmark.bruteRate(space(100));
    List<Row> rows = new ArrayList<>();
    for (int size : SIZES) {
      rows.add(benchmark.row(size));
    }
    Files.writeString(Path.of(arguments[0]), page(rows, seconds));
  }

  private Row row(int parts) {
    Space space = space(parts);
    double brute = bruteRate(space);
    List<MemoryPoolMXBean> pools =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(p -> p.getType() == MemoryType.HEAP)
            .toList();
    System.gc();
    pools.forEach(MemoryPoolMXBean::resetPeakUsage);
    Trials trials = new Trials(engine, space);
    Region region = new Region(space, trials);
    long began = System.nanoTime();
    Stop bestStop = Stop.after(MOST_SECONDS);
    BestFirst best = new BestFirst(space, region, trials, Order.COST, bestStop);
    while (distrusted(region, best)) {
      best = new BestFirst(space, region, trials, Order.COST, bestStop);
    }
    double bestSeconds = seconds(began);
    double firstSeconds = best.firstAt() == 0 ? bestSeconds : (best.firstAt() - began) / 1e9;
    Stop stop = Stop.after(countSeconds);
    long counting = System.nanoTime();
    Cover cover = new Cover(space, region, new Measure(Order.COST, space, trials), stop);
    boolean repeat = true;
    while (repeat) {
      try {
        cover.run();
        repeat = false;
      } catch (Distrust found) {
        region.distrust(found);
        cover = new Cover(space, region, new Measure(Order.COST, space, trials), stop);
      }
    }
    long peak = pools.stream().mapToLong(p -> p.getPeakUsage().getUsed()).sum();
    return new Row(
        parts,
        space.size(),
        brute,
        firstSeconds,
        bestSeconds,
        best.isComplete() && best.best().size() == BEST,
        new Answer.Effort(
            trials.checks(), trials.looks(), region.boxes().size(), region.distrusted()),
        cover.considered(),
        cover.works(),
        seconds(counting),
        peak / 1e6);
  }

  private static Space space(int parts) {
    Map<String, Integer> sizes = new TreeMap<>();
    PLACES.forEach(name -> sizes.put(name, parts / PLACES.size()));
    return Generated.space(parts, sizes, 0.08);
  }

  private static boolean distrusted(Region region, BestFirst best) {
    try {
      best.run(BEST);
      return false;
    } catch (Distrust found) {
      region.distrust(found);
      return true;
    }
  }

  private double bruteRate(Space space) {
    Trials trials = new Trials(engine, space);
    Random random = new Random(1);
    long began = System.nanoTime();
    while (seconds(began) < BRUTE_SECONDS) {
      int[] point = new int[space.slots().size()];
      for (int s = 0; s < point.length; s++) {
        point[s] = random.nextInt(space.slots().get(s).choices().size());
      }
      trials.check(point);
    }
    return trials.checks() / seconds(began);
  }

  private static double seconds(long since) {
    return (System.nanoTime() - since) / (double) TimeUnit.SECONDS.toNanos(1);
  }

  private static String page(List<Row> rows, double counted) {
    StringBuilder page = new StringBuilder();
    page.append("# What choosing takes\n\n")
        .append(
            "Written by the benchmark (`mvn -q test-compile exec:exec@choose-benchmark`); do not")
        .append(" edit. Catalogues are generated by seed\nfrom the plan that every rule's examples")
        .append(" start from: ten open places, a tenth of the parts for each, every part different")
        .append(" in about 8 %\nof its columns. One thread. Java ")
        .append(System.getProperty("java.specification.version"))
        .append(", ")
        .append(Runtime.getRuntime().availableProcessors())
        .append(" processors, which others may have used at the same time.\n\n");
    page.append("## The ten cheapest that work\n\n")
        .append("| parts | combinations | first, s | tenth, s | proved the best |")
        .append(" full checks | cells judged | boxes | not trusted |\n")
        .append("| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
    for (Row row : rows) {
      page.append(
          String.format(
              Locale.ROOT,
              "| %,d | %s | %.1f | %.1f | %s | %,d | %,d | %,d | %s |%n",
              row.parts(),
              ChoiceText.number(row.combinations()),
              row.firstSeconds(),
              row.bestSeconds(),
              row.sure() ? "yes" : "no",
              row.effort().checks(),
              row.effort().looks(),
              row.effort().boxes(),
              row.effort().distrusted().isEmpty()
                  ? "none"
                  : String.join(", ", row.effort().distrusted())));
    }
    page.append(
            "\nFull checks, cells judged and boxes are those of the counting below as well.\n\n")
        .append("## Counting, against brute force\n\n")
        .append(
            String.format(
                Locale.ROOT,
                "For %.0f s at most. Brute force is the full check without texts, one combination"
                    + " after the other, in the same run.%n%n",
                counted))
        .append("| parts | considered | that work | seconds | considered a second |")
        .append(" brute force a second | all considered | peak heap, MB |\n")
        .append("| --- | --- | --- | --- | --- | --- | --- | --- |\n");
    for (Row row : rows) {
      page.append(
          String.format(
              Locale.ROOT,
              "| %,d | %s | %s | %.1f | %.2e | %.0f | %s | %.0f |%n",
              row.parts(),
              ChoiceText.number(row.considered()),
              ChoiceText.number(row.works()),
              row.countedSeconds(),
              row.considered().doubleValue() / row.countedSeconds(),
              row.bruteRate(),
              row.considered().equals(row.combinations()) ? "yes" : "no",
              row.megabytes()));
    }
    page.append("\nThe peak holds garbage that was not yet collected.\n");
    return page.toString();
  }
}
