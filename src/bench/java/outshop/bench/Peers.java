package outshop.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.findings.Finding;
import outshop.findings.Outcome;
import outshop.rules.Bound;
import outshop.rules.RuleBook;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;

/**
 * Twelve rules that compare, on the figures of all demo plans: by Outshop's engine, by straight-line
 * Java, by CLIPS and by a JSON rule engine of npm. This class writes what the others read, measures
 * the first two, and holds all verdicts against each other.
 *
 * <p>Arguments: {@code write DIR} or {@code compare DIR}.
 */
public final class Peers {
  static final Set<String> RULES =
      new TreeSet<>(
          List.of(
              "current/charging-contact-overloaded",
              "current/function-output-inrush",
              "current/function-output-overloaded",
              "lighting/too-few-outputs",
              "motor/running-current-high",
              "protection/fuse-breaking-capacity",
              "sound/speaker-power",
              "voltage/decoder-over-maximum",
              "voltage/decoder-under-minimum",
              "voltage/motor-over-voltage",
              "voltage/receiver-over-maximum",
              "voltage/receiver-under-minimum"));

  /** A value within one part in 10^9 of a bound is at it, as in the program. */
  private static final double SAME = 1e-9;

  /** One comparison that a plan asks for. */
  record Asked(int plan, String rule, String at, double demand, double limit) {}

  private final Map<String, List<Bound>> bounds = new TreeMap<>();
  private final RuleEngine engine;
  private final List<List<Object>> facts = new ArrayList<>();
  private final List<List<Asked>> asked = new ArrayList<>();
  private final Set<String> verdicts = new TreeSet<>();

  private Peers() throws IOException {
    Map<String, String> sources = RunTimeRules.sources();
    sources.keySet().retainAll(RULES);
    List<RuleText> texts = new ArrayList<>();
    for (RuleText rule : RuleBook.load().all()) {
      if (RULES.contains(rule.name())) {
        texts.add(rule);
        bounds.put(rule.name(), rule.bounds());
      }
    }
    engine = RunTimeRules.engine(new RuleBook(texts), sources);
    List<Demo> demos = Demo.all();
    for (int p = 0; p < demos.size(); p++) {
      facts.add(Facts.of(Bench.of(demos.get(p).plan(), demos.get(p).problems())));
      List<Asked> ofPlan = new ArrayList<>();
      for (Finding f : engine.run(facts.get(p))) {
        // Only what is surely known: the others carry no ranges.
        boolean sure =
            f.demand().isPresent()
                && f.demand().get().low() == f.demand().get().high()
                && f.limit().get().low() == f.limit().get().high();
        if (sure) {
          Asked one =
              new Asked(
                  p, f.rule(), f.at().name(), f.demand().get().value(), f.limit().get().value());
          ofPlan.add(one);
          verdicts.add(verdict(one, f.outcome()));
        }
      }
      asked.add(ofPlan);
    }
  }

  public static void main(String[] arguments) throws IOException {
    Peers peers = new Peers();
    Path folder = Path.of(arguments[1]);
    if (arguments[0].equals("write")) {
      peers.write(folder);
    } else {
      peers.compare(folder);
    }
    System.exit(0);
  }

  private static String verdict(Asked one, Outcome outcome) {
    return one.plan() + " " + one.rule() + " " + one.at() + " " + outcome;
  }

  private Outcome floor(Asked one) {
    for (Bound bound : bounds.get(one.rule())) {
      double mark = one.limit() * bound.factor();
      double room = SAME * Math.max(Math.abs(one.demand()), Math.abs(mark));
      if (bound.over() ? one.demand() - mark > room : mark - one.demand() > room) {
        return bound.outcome();
      }
    }
    return Outcome.FINE;
  }

  private void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    StringBuilder expected = new StringBuilder();
    verdicts.forEach(v -> expected.append(v).append('\n'));
    put(folder.resolve("expected.txt"), expected);
    StringBuilder clips = new StringBuilder("(deftemplate asked (slot plan) (slot rule) (slot at)"
        + " (slot demand) (slot limit))\n(defglobal ?*out* = nil)\n");
    StringBuilder json = new StringBuilder("{\"rules\": [\n");
    String comma = "";
    for (Map.Entry<String, List<Bound>> rule : bounds.entrySet()) {
      clips.append(clipsRule(rule.getKey(), rule.getValue()));
      json.append(comma).append(jsonRule(rule.getKey(), rule.getValue()));
      comma = ",\n";
    }
    json.append("],\n\"plans\": [");
    StringBuilder loads = new StringBuilder();
    for (int p = 0; p < asked.size(); p++) {
      json.append(p == 0 ? "\n[" : "],\n[");
      loads.append("(deffunction load-").append(p).append(" ()\n");
      for (int i = 0; i < asked.get(p).size(); i++) {
        Asked a = asked.get(p).get(i);
        json.append(i == 0 ? "" : ",").append(String.format(Locale.ROOT,
            "{\"rule\": \"%s\", \"at\": \"%s\", \"demand\": %s, \"limit\": %s}",
            a.rule(), a.at(), a.demand(), a.limit()));
        loads.append(String.format(Locale.ROOT,
            "  (assert (asked (plan %d) (rule \"%s\") (at \"%s\") (demand %s) (limit %s)))\n",
            p, a.rule(), a.at(), clipsNumber(a.demand()), clipsNumber(a.limit())));
      }
      loads.append(")\n");
    }
    json.append("]]}\n");
    clips.append(loads);
    clips.append("(deffunction all (?out)\n  (bind ?*out* ?out)\n");
    for (int p = 0; p < asked.size(); p++) {
      clips.append("  (load-").append(p).append(") (run)\n");
    }
    clips.append(")\n");
    put(folder.resolve("peers.clp"), clips);
    put(folder.resolve("peers.json"), json);
  }

  private static String clipsNumber(double value) {
    return Double.toString(value).replace("E", "e");
  }

  private static String clipsRule(String name, List<Bound> bounds) {
    StringBuilder rule = new StringBuilder("(defrule " + name.replace('/', '.') + "\n  ?f <- (asked"
        + " (plan ?p) (rule \"" + name + "\") (at ?at) (demand ?d) (limit ?l))\n  =>\n  (bind ?v FINE)\n");
    for (int i = bounds.size() - 1; i >= 0; i--) {
      Bound b = bounds.get(i);
      String mark = "(* ?l " + b.factor() + ")";
      String beyond = b.over() ? "(- ?d " + mark + ")" : "(- " + mark + " ?d)";
      rule.append("  (if (> ").append(beyond).append(" (* 1e-9 (max (abs ?d) (abs ").append(mark)
          .append(")))) then (bind ?v ").append(b.outcome()).append("))\n");
    }
    return rule + "  (if (neq ?*out* nil) then (printout ?*out* ?p \" " + name
        + " \" ?at \" \" ?v crlf))\n  (retract ?f))\n";
  }

  private static String jsonRule(String name, List<Bound> bounds) {
    StringBuilder text = new StringBuilder("{\"name\": \"" + name + "\", \"bounds\": [");
    for (int i = 0; i < bounds.size(); i++) {
      Bound b = bounds.get(i);
      text.append(i == 0 ? "" : ", ").append(String.format(Locale.ROOT,
          "{\"outcome\": \"%s\", \"factor\": %s, \"over\": %s}",
          b.outcome(), b.factor(), b.over()));
    }
    return text + "]}";
  }

  private static void put(Path file, CharSequence text) throws IOException {
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  /** Holds the others' verdicts against the engine's, and measures engine and floor. */
  private void compare(Path folder) throws IOException {
    Set<String> floor = new TreeSet<>();
    asked.forEach(plan -> plan.forEach(a -> floor.add(verdict(a, floor(a)))));
    same("straight-line Java", floor);
    for (String peer : List.of("clips", "npm")) {
      Path file = folder.resolve(peer + ".txt");
      if (Files.exists(file)) {
        same(peer, new TreeSet<>(Files.readAllLines(file)));
      }
    }
    System.out.println("verdicts\t" + verdicts.size());
    for (int round = 0; round < 12; round++) {
      double java = micros(() -> {
        int past = 0;
        for (List<Asked> plan : asked) {
          for (Asked a : plan) {
            past += floor(a) == Outcome.FINE ? 0 : 1;
          }
        }
        return past;
      });
      double own = micros(() -> {
        int found = 0;
        for (List<Object> plan : facts) {
          found += engine.run(plan).size();
        }
        return found;
      });
      if (round >= 5) {
        System.out.println("java\t" + java / asked.size());
        System.out.println("outshop\t" + own / asked.size());
      }
    }
  }

  private void same(String who, Set<String> others) {
    if (!others.equals(verdicts)) {
      Set<String> one = new TreeSet<>(verdicts);
      one.removeAll(others);
      Set<String> other = new TreeSet<>(others);
      other.removeAll(verdicts);
      throw new IllegalStateException(
          who + " says otherwise; only Outshop: " + one + "; only it: " + other);
    }
  }

  private interface Pass {
    int go();
  }

  private static double micros(Pass pass) {
    long sum = 0;
    long passes = 0;
    long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    long end = System.nanoTime() + 500_000_000L;
    while (System.nanoTime() < end) {
      for (int i = 0; i < 20; i++) {
        sum += pass.go();
      }
      passes += 20;
    }
    if (sum < 0) {
      throw new IllegalStateException();
    }
    return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e3 / passes;
  }
}
