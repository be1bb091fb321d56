package outshop.outside;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import outshop.rulecases.Reads;
import outshop.rules.RuleText;

/**
 * Which checks against the world outside bear on which rules: those that run a rule or compare its
 * bound say so themselves; on whose figures the others bear is kept by hand in {@code
 * outside-proof.txt}.
 */
public final class OutsideProof {
  private static final String FILE = "/outside-proof.txt";

  private final List<OutsideCheck> checks;
  private final List<Bearing> lines;
  private final Map<String, List<String>> reads;

  /** A check and a rule that it bears on. */
  private record Pair(String check, String rule) {}

  /** What says that a check bears on a rule: a pattern in a line, or the check itself. */
  private record Giver(int line, String pattern) {
    static final Giver ITSELF = new Giver(-1, "");
  }

  private OutsideProof(
      List<OutsideCheck> checks, List<Bearing> lines, Map<String, List<String>> reads) {
    this.checks = checks;
    this.lines = lines;
    this.reads = reads;
  }

  public static OutsideProof load() {
    try (InputStream in = OutsideProof.class.getResourceAsStream(FILE)) {
      List<String> text = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      return of(OutsideChecks.all(), text, Reads.recorded());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A list.
   *
   * @param reads by the name of every rule, what its answers depend on
   */
  static OutsideProof of(
      List<OutsideCheck> checks, List<String> text, Map<String, List<String>> reads) {
    return new OutsideProof(
        checks,
        text.stream()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .map(Bearing::of)
            .toList(),
        reads);
  }

  /** The proof of one rule; of a rule that no check bears on, its source alone. */
  public Proof of(RuleText rule) {
    List<OutsideCheck> own = new ArrayList<>();
    List<OutsideCheck> figures = new ArrayList<>();
    for (OutsideCheck check : checks) {
      if (check.rule().filter(rule.name()::equals).isPresent()) {
        own.add(check);
      } else if (lines.stream().anyMatch(l -> isNamed(l, rule) && l.means(check))) {
        figures.add(check);
      }
    }
    boolean solved =
        lines.stream().anyMatch(l -> !isNamed(l, rule) && l.rules(reads).contains(rule.name()));
    return new Proof(Reading.of(rule.source()), own, figures, solved);
  }

  private static boolean isNamed(Bearing line, RuleText rule) {
    return line.on() instanceof Bearing.Rules named && named.names().contains(rule.name());
  }

  /** What is wrong with the list, in words. */
  List<String> faults() {
    List<String> faults = new ArrayList<>();
    for (OutsideCheck check : checks) {
      if (check.rule().isEmpty() && lines.stream().noneMatch(line -> line.means(check))) {
        faults.add("no line says what " + check.id() + " bears on");
      }
    }
    lines.forEach(line -> faults.addAll(unknown(line)));
    if (faults.isEmpty()) {
      Map<Pair, Set<Giver>> pairs = pairs();
      for (int line = 0; line < lines.size(); line++) {
        faults.addAll(needless(line, pairs));
      }
    }
    return faults;
  }

  private List<String> unknown(Bearing line) {
    List<String> unknown = new ArrayList<>();
    for (String pattern : line.checks()) {
      if (checks.stream().noneMatch(check -> Bearing.fits(pattern, check.id()))) {
        unknown.add("no check " + pattern);
      }
    }
    for (String rule : line.rules(reads)) {
      if (!reads.containsKey(rule)) {
        unknown.add("no rule " + rule);
      }
    }
    if (line.on() instanceof Bearing.Readers readers && line.rules(reads).isEmpty()) {
      unknown.add("no rule reads " + String.join(" and ", readers.words()));
    }
    return unknown;
  }

  /** The checks and rules without which the list would say the same. */
  private List<String> needless(int line, Map<Pair, Set<Giver>> pairs) {
    Bearing bearing = lines.get(line);
    List<String> needless = new ArrayList<>();
    for (String pattern : bearing.checks()) {
      Giver giver = new Giver(line, pattern);
      boolean bears = pairs.keySet().stream().anyMatch(pair -> Bearing.fits(pattern, pair.check()));
      if (bearing.on() instanceof Bearing.Nothing ? bears : addsNothing(giver::equals, pairs)) {
        needless.add(pattern);
      }
    }
    if (bearing.on() instanceof Bearing.Rules named) {
      for (String rule : named.names()) {
        Map<Pair, Set<Giver>> ofRule = new HashMap<>(pairs);
        ofRule.keySet().removeIf(pair -> !pair.rule().equals(rule));
        if (addsNothing(giver -> giver.line() == line, ofRule)) {
          needless.add(rule);
        }
      }
    }
    return needless.stream().map(word -> "not needed: " + word + " in " + bearing).toList();
  }

  /** Whether every pair that these give is given by others as well. */
  private static boolean addsNothing(Predicate<Giver> these, Map<Pair, Set<Giver>> pairs) {
    return pairs.values().stream().noneMatch(givers -> givers.stream().allMatch(these));
  }

  /** Which check bears on which rule, and what says so. */
  private Map<Pair, Set<Giver>> pairs() {
    Map<Pair, Set<Giver>> pairs = new HashMap<>();
    for (OutsideCheck check : checks) {
      check.rule().ifPresent(rule -> give(pairs, check, rule, Giver.ITSELF));
      for (int i = 0; i < lines.size(); i++) {
        List<String> rules = lines.get(i).rules(reads);
        for (String pattern : lines.get(i).checks()) {
          if (Bearing.fits(pattern, check.id())) {
            Giver giver = new Giver(i, pattern);
            rules.forEach(rule -> give(pairs, check, rule, giver));
          }
        }
      }
    }
    return pairs;
  }

  private static void give(
      Map<Pair, Set<Giver>> pairs, OutsideCheck check, String rule, Giver giver) {
    pairs.computeIfAbsent(new Pair(check.id(), rule), pair -> new HashSet<>()).add(giver);
  }
}
