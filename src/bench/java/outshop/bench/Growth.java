package outshop.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import java.util.ArrayList;
import outshop.catalogue.CatalogueReader;
import outshop.cli.Check;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/**
 * How time grows with the number of rules, of parts and of plans, in milliseconds of processor time.
 * Prints a line a point: series, size, time.
 *
 * <p>Argument: {@code rules}, {@code parts}, {@code parts-short} or {@code plans}.
 */
public final class Growth {
  private static long sink;

  private Growth() {}

  public static void main(String[] arguments) throws IOException {
    switch (arguments[0]) {
      case "rules" -> rules();
      case "parts" -> parts(100, 1_000, 10_000, 100_000);
      case "parts-short" -> parts(1_000, 10_000);
      default -> plans();
    }
    System.exit(sink == 42 ? 1 : 0);
  }

  private static void point(String series, int size, LongSupplier work, int warm, int counted) {
    double[] millis = new double[counted];
    for (int i = -warm; i < counted; i++) {
      long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      sink += work.getAsLong();
      if (i >= 0) {
        millis[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e6;
      }
    }
    Arrays.sort(millis);
    System.out.println(series + "\t" + size + "\t" + millis[counted / 2]);
  }

  /** Fewer rules than there are, or all of them and copies of some under other names. */
  private static void rules() throws IOException {
    Map<String, String> sources = RunTimeRules.sources();
    RuleBook book = RuleBook.load();
    List<String> names = new ArrayList<>(sources.keySet());
    Demo demo = Demo.all().get(0);
    List<Object> facts = Facts.of(Bench.of(demo.plan(), demo.problems()));
    for (int size : new int[] {20, 40, 80, names.size(), 280, 400}) {
      Map<String, String> some = new TreeMap<>();
      List<RuleText> texts = new ArrayList<>();
      for (int i = 0; i < size; i++) {
        // Spread over all families.
        String name = names.get((int) ((long) i * 61 % names.size()));
        String named = i < names.size() ? name : name + "-copy-" + i / names.size();
        some.put(
            named, sources.get(name).replace("rule \"" + name + "\"", "rule \"" + named + "\""));
        texts.add(renamed(book.find(name).orElseThrow(), named));
      }
      RuleEngine engine = RunTimeRules.engine(new RuleBook(texts), some);
      point("rules", size, () -> repeat(200, () -> engine.run(facts).size()), 30, 9);
    }
  }

  private static long repeat(int times, LongSupplier work) {
    long sum = 0;
    for (int i = 0; i < times; i++) {
      sum += work.getAsLong();
    }
    return sum;
  }

  private static RuleText renamed(RuleText r, String name) {
    return new RuleText(
        name, r.title(), r.bounds(), r.situations(), r.protectsPeople(), r.basis(), r.source(),
        r.headline(), r.fine(), r.why(), r.cures(), r.reads());
  }

  /** The demo catalogue, its rows again and again under other ids. */
  private static void parts(int... sizes) throws IOException {
    for (int size : sizes) {
      Map<String, byte[]> tables = tables(size);
      point(
          "parts",
          size,
          () -> CatalogueReader.read(tables).catalogue().all().size(),
          size > 10_000 ? 2 : 20,
          9);
    }
  }

  private static Map<String, byte[]> tables(int parts) throws IOException {
    Map<String, byte[]> tables = new TreeMap<>();
    List<Path> files;
    try (Stream<Path> entries = Files.list(Demo.CATALOGUE)) {
      files = entries.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
    for (int f = 0; f < files.size(); f++) {
      int mine = parts / files.size() + (f < parts % files.size() ? 1 : 0);
      List<String> lines = Files.readAllLines(files.get(f));
      List<String> rows =
          lines.stream().skip(1).filter(l -> !l.startsWith("#") && !l.isBlank()).toList();
      StringBuilder table = new StringBuilder(lines.get(0)).append('\n');
      for (int i = 0; i < mine; i++) {
        String row = rows.get(i % rows.size());
        int comma = row.indexOf(',');
        table.append("p").append(f).append('-').append(i).append(row.substring(comma)).append('\n');
      }
      tables.put(
          "catalogue/" + files.get(f).getFileName(),
          table.toString().getBytes(StandardCharsets.UTF_8));
    }
    return tables;
  }

  /** Plans read and checked one after the other in one process that starts cold. */
  private static void plans() throws IOException {
    RuleEngine engine = RuleEngine.load();
    CatalogueReader.Read catalogue = CatalogueReader.read(Demo.CATALOGUE);
    List<Path> files = Demo.files();
    long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    int next = 1;
    for (int i = 1; i <= 10_000; i++) {
      Demo demo = Demo.of(files.get(i % files.size()), catalogue);
      sink += new Check(engine).report(demo.plan(), demo.problems()).fine().size();
      if (i == next) {
        long used = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began;
        System.out.println("plans\t" + i + "\t" + used / 1e6);
        next *= 10;
      }
    }
  }
}
