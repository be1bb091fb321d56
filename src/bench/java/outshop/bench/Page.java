package outshop.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Writes docs/performance.md from what was measured, or holds the short form's ratios against the
 * recorded ones.
 *
 * <p>Arguments: {@code write DIR} or {@code hold DIR}.
 */
public final class Page {
  private static final Path PAGE = Path.of("docs/performance.md");
  private static final Path BOUNDS = Path.of("src/bench/bounds.txt");
  private static final String NOT_RUN = "not measured";

  private final Path folder;
  private final StringBuilder page = new StringBuilder();

  /** Several values of one thing. */
  private record Sample(double[] sorted) {
    static Sample of(List<Double> values) {
      double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
      Arrays.sort(sorted);
      return new Sample(sorted);
    }

    boolean isEmpty() {
      return sorted.length == 0;
    }

    double median() {
      int half = sorted.length / 2;
      return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    String words() {
      return isEmpty()
          ? NOT_RUN
          : Page.words(median())
              + " ("
              + Page.words(sorted[0])
              + " to "
              + Page.words(sorted[sorted.length - 1])
              + ")";
    }
  }

  private Page(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws IOException {
    Page page = new Page(Path.of(arguments[1]));
    if (arguments[0].equals("write")) {
      page.write();
    } else if (!page.hold()) {
      System.exit(1);
    }
  }

  private List<String[]> lines(String file) throws IOException {
    Path path = folder.resolve(file);
    List<String[]> lines = new ArrayList<>();
    if (Files.exists(path)) {
      for (String line : Files.readAllLines(path)) {
        if (line.indexOf('\t') > 0) {
          lines.add(line.split("\t"));
        }
      }
    }
    return lines;
  }

  private Sample sample(String file, String name, int column) throws IOException {
    List<Double> values = new ArrayList<>();
    for (String[] line : lines(file)) {
      if (line[0].equals(name)) {
        values.add(Double.parseDouble(line[column]));
      }
    }
    return Sample.of(values);
  }

  /** The ratios of two samples, run by run as they were made in turn. */
  private Sample ratio(String file, String one, String other, int column) throws IOException {
    List<Double> ones = new ArrayList<>();
    List<Double> others = new ArrayList<>();
    for (String[] line : lines(file)) {
      if (line[0].equals(one)) {
        ones.add(Double.parseDouble(line[column]));
      } else if (line[0].equals(other)) {
        others.add(Double.parseDouble(line[column]));
      }
    }
    List<Double> ratios = new ArrayList<>();
    for (int i = 0; i < Math.min(ones.size(), others.size()); i++) {
      ratios.add(ones.get(i) / others.get(i));
    }
    return Sample.of(ratios);
  }

  static String words(double value) {
    String pattern = Math.abs(value) >= 100 ? "%,.0f" : Math.abs(value) >= 10 ? "%.1f" : "%.3f";
    return String.format(Locale.ROOT, pattern, value);
  }

  // The short form

  private boolean hold() throws IOException {
    Map<String, Double> measured = new LinkedHashMap<>();
    measured.put("cold-over-parse-only", ratio("cold.tsv", "launcher", "parse-only", 2).median());
    double yardstick = sample("steady.tsv", "yardstick", 1).median();
    measured.put("engine-over-yardstick", yardstick / sample("steady.tsv", "engine", 1).median());
    measured.put("check-over-yardstick", yardstick / sample("steady.tsv", "check", 1).median());
    measured.put("parts-tenfold", at("parts", 10_000) / at("parts", 1_000));
    boolean held = true;
    for (String line : Files.readAllLines(BOUNDS)) {
      if (!line.startsWith("#")) {
        String[] words = line.split(" ");
        double bound = 1.5 * Double.parseDouble(words[1]);
        double ratio = measured.getOrDefault(words[0], Double.NaN);
        measured.remove(words[0]);
        System.out.println(words[0] + ": " + words(ratio) + ", recorded " + words[1]);
        // Asked this way round so that what is not a number fails as well.
        boolean good = ratio <= bound;
        held &= good;
        if (!good) {
          System.out.println(words[0] + ": more than half worse than the recorded " + words[1]);
        }
      }
    }
    if (!measured.isEmpty()) {
      System.out.println("no bound is recorded for " + measured.keySet());
    }
    return held && measured.isEmpty();
  }

  private double at(String series, int size) throws IOException {
    for (String[] line : lines("growth.tsv")) {
      if (line[0].equals(series) && Integer.parseInt(line[1]) == size) {
        return Double.parseDouble(line[2]);
      }
    }
    return Double.NaN;
  }

  // The page

  private void write() throws IOException {
    say("# How fast it is", "");
    say("Written by `src/bench/run`; a change here by hand is lost. Each figure is a median with the least and the");
    say("greatest of its runs behind it. What is compared was run in turn, A B A B. Compare ratios, and only within");
    say("one table: the machine may have been busy with other things, and how busy it was is said below.", "");
    machine();
    targets();
    cold();
    steady();
    if (lines("jmh.tsv").isEmpty()) {
      earlier("By JMH");
    } else {
      jmh();
    }
    if (lines("peers.tsv").isEmpty()) {
      earlier("## Beside others");
    } else {
      peers();
    }
    if (lines("growth.tsv").isEmpty()) {
      earlier("## How it grows");
    } else {
      growth();
    }
    Files.writeString(PAGE, page, StandardCharsets.UTF_8);
  }

  private void say(String... lines) {
    for (String line : lines) {
      page.append(line).append('\n');
    }
  }

  /** What was not measured this time stays as an earlier run wrote it, and says so. */
  private void earlier(String start) throws IOException {
    List<String> old = Files.readAllLines(PAGE);
    String note = "*From an earlier run than the rest.*";
    boolean within = false;
    for (String line : old) {
      boolean begins = line.startsWith(start);
      within = begins || (within && !line.startsWith("## "));
      if (begins && !start.startsWith("## ")) {
        say(note, "");
      }
      if (within && !line.equals(note)) {
        say(line);
      }
      if (begins && start.startsWith("## ")) {
        say("", note);
      }
    }
  }

  private void machine() throws IOException {
    say("## On what", "");
    for (String line : Files.readAllLines(folder.resolve("machine.txt"))) {
      say("- " + line);
    }
    say("");
  }

  private String counted(String name) throws IOException {
    Sample sample = sample("steady.tsv", name, 1);
    return sample.isEmpty() ? NOT_RUN : words(sample.median()).replaceAll("\\.0+$", "");
  }

  private void target(String what, String goal, Sample sample, boolean met) {
    target(what, goal, sample, Sample.of(List.of()), met);
  }

  private void target(String what, String goal, Sample sample, Sample floor, boolean met) {
    String outcome = sample.isEmpty() ? NOT_RUN : met ? "met" : "**missed**";
    say("| " + what + " | " + goal + " | " + sample.words() + " | "
        + (floor.isEmpty() ? "" : floor.words()) + " | " + outcome + " |");
  }

  private static boolean atMost(Sample sample, double bound) {
    return !sample.isEmpty() && sample.median() <= bound;
  }

  private static boolean atLeast(Sample sample, double bound) {
    return !sample.isEmpty() && sample.median() >= bound;
  }

  private void targets() throws IOException {
    say("## What was aimed at", "", "| what | aim | measured | floor under it | |", "| --- | --- | --- | --- | --- |");
    Sample launcher = ratio("cold.tsv", "launcher", "parse-only", 1);
    target("cold check, launcher / parse-only, wall", "at most 2.5", launcher, ratio("cold.tsv", "engine-start", "parse-only", 1), atMost(launcher, 2.5));
    Sample aot = sample("cold.tsv", "launcher-25", 1);
    Sample aotRatio = ratio("cold.tsv", "launcher-25", "parse-only-25", 1);
    boolean aotMet = atMost(aot, 0.15) || atMost(aotRatio, 2);
    target("cold check, Java 25 with its cache, wall s", "at most 0.15, or", aot, sample("cold.tsv", "engine-start-25", 1), aotMet);
    target("the same / parse-only on Java 25, wall", "at most 2", aotRatio, ratio("cold.tsv", "engine-start-25", "parse-only-25", 1), aotMet);
    Sample plain = sample("cold.tsv", "java-jar", 1);
    target("cold check, `java -jar`, wall s", "at most 0.6", plain, sample("cold.tsv", "engine-start-plain", 1), atMost(plain, 0.6));
    Sample compiled = ratio("cold.tsv", "launcher", "rules-compiled-at-start", 1);
    target("launcher / rules compiled at start, wall", "at most 0.15", compiled, atMost(compiled, 0.15));
    Sample memory = sample("cold.tsv", "launcher", 3);
    target("peak memory, MB", "at most 90", memory, atMost(memory, 90));
    Sample engine = sample("steady.tsv", "engine", 1);
    target("engine alone, plans a second", "at least 25,000", engine, sample("steady.tsv", "engine-alone", 1), atLeast(engine, 25_000));
    Sample check = sample("steady.tsv", "check", 1);
    target("whole check, plans a second", "at least 5,000", check, checkFloor(), atLeast(check, 5_000));
    Sample threads = sample("steady.tsv", "threads", 1);
    target("two threads / one, checks by the clock", "at least 1.8", threads, atLeast(threads, 1.8));
    Sample early = sample("memory.tsv", "memory early", 1);
    Sample late = sample("memory.tsv", "memory late", 1);
    if (!early.isEmpty()) {
      double grown = late.median() / early.median();
      target(
          "memory after "
              + words(sample("memory.tsv", "memory checks", 1).median())
              + " checks / after a tenth of them (run of its own, "
              + day()
              + ")",
          "no growth",
          Sample.of(List.of(grown)),
          grown < 1.05);
    }
    say("", "The floors: of a cold check, a program that parses the same files with the same parsers and starts the rule"
        + " engine with all rules but no fact, in the same way of being started; of the engine, the same rules"
        + " run before a desk that throws away what they hand in (nothing is graded, no finding is made); of a whole check, its circuit's solutions"
        + " and an engine that finds what is to be run but runs nothing, and nothing else.", "");
    floors();
  }

  private String day() throws IOException {
    return lines("memory.tsv").stream()
        .filter(line -> line[0].equals("memory day"))
        .map(line -> line[1])
        .findFirst()
        .orElse(NOT_RUN);
  }

  /** A check that only solves its circuit and lets the engine find what is to be run. */
  private Sample checkFloor() throws IOException {
    Sample solutions = sample("steady.tsv", "solutions", 1);
    Sample bare = sample("steady.tsv", "engine-bare", 1);
    return solutions.isEmpty() || bare.isEmpty()
        ? Sample.of(List.of())
        : Sample.of(List.of(1 / (1 / solutions.median() + 1 / bare.median())));
  }

  /** What keeps a missed aim from being met, as far as it was measured. */
  private void floors() throws IOException {
    Sample base = sample("cold.tsv", "parse-only", 2);
    Sample launcher = sample("cold.tsv", "launcher", 2);
    if (!base.isEmpty()) {
      say("Processor time of the cold check is " + words(launcher.median()) + " s, of parse-only "
          + words(base.median()) + " s; of what lies between, laying out the rule base takes "
          + counted("base first") + " ms in a fresh process without an archive and " + counted("base again")
          + " ms the next time, when its classes are there; it runs beside the reading of the files where a second"
          + " processor is free.", "");
    }
    Sample solutions = sample("steady.tsv", "solutions", 1);
    Sample check = sample("steady.tsv", "check", 1);
    Sample engine = sample("steady.tsv", "engine", 1);
    if (!solutions.isEmpty()) {
      say("A whole check takes " + words(1e6 / check.median()) + " µs: the circuit's solutions alone (with the"
          + " circuit; every load case, at its values and at the ends of what is assumed) " + words(1e6 / solutions.median())
          + " µs, the engine " + words(1e6 / engine.median()) + " µs, all figures with the circuit "
          + words(1e6 / sample("steady.tsv", "figures", 1).median())
          + " µs. The steps are measured one after the other in one process, each over and over by itself: within a"
          + " check they follow each other, and the processor finds less of their code and data at hand.", "");
      say("Two threads can get no more done than the processors that are free: see above how busy the machine was.",
          "");
    }
  }

  private void cold() throws IOException {
    say("## From the key press to the last byte", "");
    say("Whole processes, `check " + Demo.ONE + "` with the whole demo catalogue, the output thrown away.");
    say("*parse-only* reads the same files with the same parsers and does nothing else, with the launcher's options;");
    say("*with its archive* it has an archive of its classes as the launcher has.", "");
    say("| process | wall, s | processor, s | peak memory, MB | wall / parse-only |");
    say("| --- | --- | --- | --- | --- |");
    Map<String, String> names = new LinkedHashMap<>();
    names.put("parse-only", "parse-only");
    names.put("parse-only-archive", "parse-only with its archive");
    names.put("engine-start", "parse and start the rule engine, with its archive");
    names.put("engine-start-plain", "parse and start the rule engine, plain `java`");
    names.put("launcher", "launcher, with its archive");
    names.put("launcher-none", "launcher without archive");
    names.put("java-jar", "`java -jar`");
    names.put("rules-compiled-at-start", "the same rules compiled at start");
    names.put("parse-only-25", "parse-only, Java 25");
    names.put("parse-only-25-cache", "parse-only with its cache, Java 25");
    names.put("engine-start-25", "parse and start the rule engine, with its cache, Java 25");
    names.put("launcher-25", "launcher with its cache, Java 25");
    for (Map.Entry<String, String> name : names.entrySet()) {
      String base = name.getKey().contains("25") ? "parse-only-25" : "parse-only";
      say("| " + name.getValue() + " | " + sample("cold.tsv", name.getKey(), 1).words() + " | "
          + sample("cold.tsv", name.getKey(), 2).words() + " | "
          + sample("cold.tsv", name.getKey(), 3).words() + " | "
          + (name.getKey().equals(base) ? "1" : ratio("cold.tsv", name.getKey(), base, 1).words())
          + " |");
    }
    say("");
  }

  private void steady() throws IOException {
    say("## In one process, once warm", "");
    say("Rates by processor time of the thread, over all " + counted("plans") + " demo plans in turn, each a plan that was never"
        + " asked anything before; on average " + counted("facts") + " facts and " + counted("findings")
        + " findings a plan, " + counted("rules") + " rules. Reports made by four threads at once were the same to the"
        + " byte as those made alone (" + counted("compared") + " compared). *yardstick*: 500 short texts counted in a"
        + " sorted map. *engine-bare*: the engine finds what is to be run and runs nothing; *engine-alone*: it runs every"
        + " rule, and what they hand in is thrown away; *engine*: it is graded.", "");
    say("| step | a second | over yardstick |", "| --- | --- | --- |");
    double yardstick = sample("steady.tsv", "yardstick", 1).median();
    for (String step : List.of("yardstick", "circuit", "solutions", "figures", "engine-bare", "engine-alone", "engine", "check")) {
      Sample sample = sample("steady.tsv", step, 1);
      say("| " + step + " | " + sample.words() + " | "
          + (sample.isEmpty() ? NOT_RUN : words(yardstick / sample.median())) + " |");
    }
    say("");
  }

  private void jmh() throws IOException {
    say("By JMH, one plan, microseconds:", "", "| step | average, with the error JMH gives |", "| --- | --- |");
    for (String[] line : lines("jmh.tsv")) {
      say("| " + line[0] + " | " + words(Double.parseDouble(line[1])) + " ± "
          + words(Double.parseDouble(line[2])) + " |");
    }
    say("");
  }

  private void peers() throws IOException {
    say("## Beside others", "");
    say("Twelve rules that compare, the same comparisons of all demo plans, microseconds of processor time a plan. The");
    say("verdicts are held against each other first: " + peersCount() + ", all equal, or nothing is measured.");
    say("Outshop's engine is given every fact of a plan and finds for itself what is to be compared, by the twelve rules");
    say("as they are; the others are handed each comparison and its numbers, so theirs is the lighter task.", "");
    say("| who | a plan | over straight-line Java |", "| --- | --- | --- |");
    Map<String, String> names = new LinkedHashMap<>();
    names.put("java", "straight-line Java (the floor)");
    names.put("outshop", "Outshop's engine");
    names.put("clips", "CLIPS, facts asserted by functions of its own");
    names.put("npm", "json-rules-engine " + version());
    double floor = sample("peers.tsv", "java", 1).median();
    for (Map.Entry<String, String> name : names.entrySet()) {
      Sample sample = sample("peers.tsv", name.getKey(), 1);
      say("| " + name.getValue() + " | " + sample.words() + " | "
          + (sample.isEmpty() ? NOT_RUN : words(sample.median() / floor)) + " |");
    }
    say("");
  }

  private String peersCount() throws IOException {
    Sample sample = sample("peers.tsv", "verdicts", 1);
    return sample.isEmpty() ? NOT_RUN : words(sample.median()) + " verdicts";
  }

  private String version() throws IOException {
    Path file = folder.resolve("npm-version.txt");
    return Files.exists(file) ? Files.readString(file).trim() : "";
  }

  private void growth() throws IOException {
    say("## How it grows", "");
    Map<String, String> series = new LinkedHashMap<>();
    series.put("rules", "200 runs of the engine on one plan, by number of rules (past what there are: copies under other"
        + " names, compiled for this)");
    series.put("parts", "reading a catalogue, by number of parts");
    series.put("plans", "plans read and checked in one process that starts cold, by number of plans");
    for (Map.Entry<String, String> one : series.entrySet()) {
      List<double[]> points = new ArrayList<>();
      for (String[] line : lines("growth.tsv")) {
        if (line[0].equals(one.getKey())) {
          points.add(new double[] {Double.parseDouble(line[1]), Double.parseDouble(line[2])});
        }
      }
      if (points.isEmpty()) {
        continue;
      }
      String file = "growth-" + one.getKey() + ".svg";
      Files.writeString(
          Path.of("docs").resolve(file), Plot.of(one.getKey(), points), StandardCharsets.UTF_8);
      say("![" + one.getValue() + "](" + file + ")", "");
      say("Processor time in milliseconds: " + one.getValue() + ". The steeper of the last two steps has the exponent "
          + words(steepest(points)) + " (1 is in proportion).", "");
      say("| " + one.getKey() + " | ms | µs each |", "| --- | --- | --- |");
      for (double[] p : points) {
        say("| " + String.format(Locale.ROOT, "%,.0f", p[0]) + " | " + words(p[1]) + " | "
            + words(1000 * p[1] / p[0]) + " |");
      }
      say("");
    }
  }

  private static double steepest(List<double[]> points) {
    double steepest = Double.NEGATIVE_INFINITY;
    for (int i = Math.max(1, points.size() - 2); i < points.size(); i++) {
      double[] a = points.get(i - 1);
      double[] b = points.get(i);
      steepest = Math.max(steepest, Math.log(b[1] / a[1]) / Math.log(b[0] / a[0]));
    }
    return steepest;
  }
}
