package outshop.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import outshop.circuit.CircuitBuilder;
import outshop.circuit.LoadCase;
import outshop.cli.Check;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.render.json.JsonReport;
import outshop.rules.RuleEngine;

/**
 * What one long-lived process gets done: each step by itself, the whole check, on one thread and on
 * two, and whether memory grows. Prints a line a result: name, value, tab between.
 *
 * <p>Arguments: seconds a window, windows, and {@code short} for yardstick, engine and check alone; or
 * {@code memory} and a number of checks.
 */
public final class Steady {
  /** After as long, Java has compiled what is worth it. */
  private static final double WARM_SECONDS = 45;

  private final RuleEngine engine = RuleEngine.load();
  private final List<Demo> demos = Demo.all();
  private final List<List<Object>> facts = new ArrayList<>();
  private final double seconds;
  private final int windows;
  private long sink;

  /** Does its work on the plan of a number; each call must stand alone. */
  private interface Work {
    long on(int plan);
  }

  private Steady(double seconds, int windows) throws IOException {
    this.seconds = seconds;
    this.windows = windows;
    for (Demo demo : demos) {
      facts.add(Facts.of(Bench.of(demo.plan(), demo.problems())));
    }
  }

  public static void main(String[] arguments) throws Exception {
    if (arguments[0].equals("memory")) {
      new Steady(0, 0).memory(Integer.parseInt(arguments[1]));
      System.exit(0);
    }
    long began = cpu();
    RuleEngine.load();
    print("base first", (cpu() - began) / 1e6);
    began = cpu();
    RuleEngine.load();
    print("base again", (cpu() - began) / 1e6);
    Steady steady = new Steady(Double.parseDouble(arguments[0]), Integer.parseInt(arguments[1]));
    boolean whole = arguments.length == 2;
    steady.counts();
    if (whole) {
      steady.warm(WARM_SECONDS);
    }
    steady.rate("yardstick", p -> yardstick());
    steady.rate("engine", p -> steady.engine.run(steady.facts.get(p)).size());
    steady.rate("check", steady::check);
    if (!whole) {
      System.exit(0);
    }
    Bare bare = new Bare();
    steady.rate("engine-bare", p -> bare.find(steady.facts.get(p)));
    steady.rate("engine-alone", p -> bare.run(steady.facts.get(p)));
    steady.steps();
    steady.twoThreads();
    steady.sameWhateverTheThreads();
    System.exit(steady.sink == 42 ? 1 : 0);
  }

  /** Plain work that every Java does at its own speed, to hold the others against. */
  private static long yardstick() {
    java.util.TreeMap<String, Integer> map = new java.util.TreeMap<>();
    for (int i = 0; i < 500; i++) {
      map.merge("key-" + i * 7919 % 211, 1, Integer::sum);
    }
    return map.size();
  }

  private void counts() {
    print("plans", demos.size());
    print("rules", engine.book().all().size());
    print("facts", facts.stream().mapToInt(List::size).average().orElse(0));
    print(
        "findings", facts.stream().mapToInt(f -> engine.run(f).size()).average().orElse(0));
  }

  private void warm(double most) {
    long began = System.nanoTime();
    while (System.nanoTime() - began < most * 1e9) {
      for (int p = 0; p < demos.size(); p++) {
        sink += check(p);
      }
    }
  }

  private long check(int plan) {
    Demo demo = demos.get(plan).fresh();
    return new Check(engine).report(demo.plan(), demo.problems()).fine().size();
  }

  private void steps() {
    rate("circuit", p -> CircuitBuilder.build(demos.get(p).fresh().plan()).links().size());
    rate(
        "figures",
        p -> {
          Demo demo = demos.get(p).fresh();
          return Facts.of(Bench.of(demo.plan(), demo.problems())).size();
        });
    // Every case at its values and at the ends of what is assumed, as a check solves them.
    rate("solutions", this::solved);
  }

  private int solved(int plan) {
    Demo demo = demos.get(plan).fresh();
    Bench bench = Bench.of(demo.plan(), demo.problems());
    int missing = 0;
    for (LoadCase loadCase : LoadCase.all()) {
      missing += bench.cases().wants(loadCase).size();
    }
    return missing;
  }

  /** Plans a second of processor time, a line a window, after as many windows of warming up. */
  private void rate(String name, Work work) {
    for (int window = 0; window < 2 * windows; window++) {
      long began = System.nanoTime();
      long cpu = cpu();
      long done = 0;
      while (System.nanoTime() - began < seconds * 1e9) {
        for (int p = 0; p < demos.size(); p++) {
          sink += work.on(p);
        }
        done += demos.size();
      }
      if (window >= windows) {
        print(name, done / ((cpu() - cpu) / 1e9));
      }
    }
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** How much more two threads get done than one, by the clock, window by window in turn. */
  private void twoThreads() throws InterruptedException {
    for (int window = 0; window < windows; window++) {
      double one = together(1);
      double two = together(2);
      print("threads", two / one);
    }
  }

  private double together(int threads) throws InterruptedException {
    AtomicInteger done = new AtomicInteger();
    CountDownLatch ended = new CountDownLatch(threads);
    long end = System.nanoTime() + (long) (seconds * 1e9);
    for (int t = 0; t < threads; t++) {
      new Thread(
              () -> {
                while (System.nanoTime() < end) {
                  for (int p = 0; p < demos.size(); p++) {
                    check(p);
                    done.incrementAndGet();
                  }
                }
                ended.countDown();
              })
          .start();
    }
    ended.await();
    return done.get() / seconds;
  }

  /** Ends the process where a report made beside others differs from one made alone. */
  private void sameWhateverTheThreads() throws InterruptedException {
    List<String> alone = new ArrayList<>();
    for (int p = 0; p < demos.size(); p++) {
      alone.add(json(p));
    }
    AtomicInteger differing = new AtomicInteger();
    List<Thread> threads = new ArrayList<>();
    for (int t = 0; t < 4; t++) {
      Thread thread =
          new Thread(
              () -> {
                for (int i = 0; i < 10 * demos.size(); i++) {
                  int p = i % demos.size();
                  differing.addAndGet(json(p).equals(alone.get(p)) ? 0 : 1);
                }
              });
      threads.add(thread);
      thread.start();
    }
    for (Thread thread : threads) {
      thread.join();
    }
    if (differing.get() > 0) {
      throw new IllegalStateException(differing + " reports differ when made beside others");
    }
    print("compared", 40 * demos.size());
  }

  private String json(int plan) {
    Demo demo = demos.get(plan).fresh();
    return JsonReport.text(new Check(engine).report(demo.plan(), demo.problems()));
  }

  /** Memory in use after a tenth of the checks, and after all of them; as many threads as fit. */
  private void memory(int checks) throws InterruptedException {
    checked(checks / 10);
    print("memory early", used());
    checked(checks - checks / 10);
    print("memory late", used());
    print("memory checks", checks);
  }

  private void checked(int checks) throws InterruptedException {
    AtomicInteger left = new AtomicInteger(checks);
    List<Thread> threads = new ArrayList<>();
    for (int t = 0; t < Runtime.getRuntime().availableProcessors(); t++) {
      Thread thread =
          new Thread(
              () -> {
                for (int n = left.getAndDecrement(); n > 0; n = left.getAndDecrement()) {
                  check(n % demos.size());
                }
              });
      threads.add(thread);
      thread.start();
    }
    for (Thread thread : threads) {
      thread.join();
    }
  }

  private static double used() {
    System.gc();
    return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6;
  }

  private static void print(String name, double value) {
    System.out.println(name + "\t" + value);
  }
}
