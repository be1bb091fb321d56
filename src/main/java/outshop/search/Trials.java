package outshop.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import outshop.catalogue.Column;
import outshop.catalogue.Columns;
import outshop.catalogue.Loose;
import outshop.catalogue.Part;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.figures.RunTime;
import outshop.findings.Outcome;
import outshop.plan.Accepted;
import outshop.plan.Plan;
import outshop.rules.RuleEngine;
import outshop.rules.RuleText;
import outshop.rules.Verdict;
import outshop.units.Amount;
import outshop.units.Peeks;

/** Asks the rules: of one combination, or of a cell of them at once. */
final class Trials {
  private static final int MOST_KEPT = 20_000;

  private final RuleEngine engine;
  private final Space space;
  private final Map<Asked, Part> blends = new ConcurrentHashMap<>();
  private final Map<String, Integer> families = new ConcurrentHashMap<>();
  private final AtomicLong checks = new AtomicLong();
  private final AtomicLong looks = new AtomicLong();

  private record Asked(int slot, BitSet set, Blend.End end) {}

  Trials(RuleEngine engine, Space space) {
    this.engine = engine;
    this.space = space;
  }

  /** How many combinations were checked in full. */
  long checks() {
    return checks.get();
  }

  /** How many cells were judged at once, as far as was needed. */
  long looks() {
    return looks.get();
  }

  /** What the full check finds in one combination; nothing that the plan's owner accepts. */
  List<Verdict> check(int[] point) {
    return check(facts(point));
  }

  /** The full check's facts of one combination. */
  List<Object> facts(int[] point) {
    return Facts.of(bench(space.parts(point)));
  }

  /** As {@link #check(int[])}, of these facts. */
  List<Verdict> check(List<Object> facts) {
    checks.incrementAndGet();
    return counted(engine.verdicts(facts));
  }

  /** What one family's rules find in one combination. */
  List<Verdict> check(int[] point, int family) {
    looks.incrementAndGet();
    return verdicts(bench(space.parts(point)), family);
  }

  /** Which columns of which place are read on the way to a family's facts. */
  List<TreeSet<String>> read(int[] point, int family) {
    return watched(point, family).read();
  }

  /** What one family's rules find in one combination, and what is read for it of each place. */
  Watch watched(int[] point, int family) {
    List<TreeSet<String>> read = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    for (int s = 0; s < point.length; s++) {
      TreeSet<String> columns = new TreeSet<>();
      read.add(columns);
      parts.add(Blend.watched(space.part(s, point[s]), columns::add));
    }
    looks.incrementAndGet();
    List<Verdict> verdicts = verdicts(bench(parts), family);
    for (int s = 0; s < point.length; s++) {
      if (read.get(s).contains(Loose.ALL)) {
        for (Column column : Columns.of(space.part(s, point[s]).kind())) {
          read.get(s).add(column.name());
        }
      }
    }
    return new Watch(verdicts, read);
  }

  /** What a family's rules found, and the columns that were read, by place. */
  record Watch(List<Verdict> verdicts, List<TreeSet<String>> read) {}

  /** What the rules find in a cell: what holds for every combination of it. */
  List<Verdict> look(BitSet[] cell, Blend.End end) {
    looks.incrementAndGet();
    return counted(engine.verdicts(Facts.of(bench(blended(cell, end)))));
  }

  /**
   * As {@link #look(BitSet[], Blend.End)}, by one family's rules alone. Where the family looked at
   * one value out of a range, what it says of situations is left out: it need not hold for all. How
   * many contacts the circuit was built with does not count for that: more of them change nothing
   * but at the ends, which are looked at.
   */
  List<Verdict> look(BitSet[] cell, Blend.End end, int family) {
    looks.incrementAndGet();
    Bench bench = bench(blended(cell, end));
    Peeks.clear();
    List<?> facts = Facts.family(bench, family);
    boolean peeked = Peeks.seen();
    List<Verdict> verdicts = counted(engine.verdicts(facts));
    return peeked ? verdicts.stream().filter(Verdict::compared).toList() : verdicts;
  }

  /** How long it runs on a charge, over all combinations of a cell. */
  Amount hours(BitSet[] cell) {
    looks.incrementAndGet();
    Bench bench = bench(blended(cell, Blend.End.HIGH));
    for (int family = 0; family < Facts.families(); family++) {
      if (family == families.getOrDefault("", family)) {
        for (Object fact : Facts.family(bench, family)) {
          if (fact instanceof RunTime runTime) {
            families.put("", family);
            return runTime.hours();
          }
        }
      }
    }
    return new Amount.Absent("run time");
  }

  /** The family whose facts a rule judges; empty if it has nothing to say about this one. */
  OptionalInt family(String rule, int[] point) {
    Integer known = families.get(rule);
    if (known != null) {
      return OptionalInt.of(known);
    }
    for (int family = 0; family < Facts.families(); family++) {
      if (check(point, family).stream().anyMatch(v -> v.rule().equals(rule))) {
        families.put(rule, family);
        return OptionalInt.of(family);
      }
    }
    return OptionalInt.empty();
  }

  private List<Part> blended(BitSet[] cell, Blend.End end) {
    if (blends.size() > MOST_KEPT) {
      blends.clear();
    }
    List<Part> parts = new ArrayList<>();
    for (int s = 0; s < cell.length; s++) {
      int slot = s;
      Blend.End which = cell[s].cardinality() == 1 ? Blend.End.LOW : end;
      parts.add(
          blends.computeIfAbsent(
              new Asked(slot, (BitSet) cell[slot].clone(), which),
              a -> Blend.of(space.slots().get(slot), a.set(), which, column -> {})));
    }
    return parts;
  }

  private Bench bench(List<Part> parts) {
    return Bench.of(space.plan(parts), space.problems());
  }

  private List<Verdict> verdicts(Bench bench, int family) {
    return counted(engine.verdicts(Facts.family(bench, family)));
  }

  /** Without the violations and warnings that the owner accepts and may accept. */
  private List<Verdict> counted(List<Verdict> verdicts) {
    Plan plan = space.plan();
    if (plan.accepted().isEmpty()) {
      return verdicts;
    }
    return verdicts.stream().filter(v -> !isAccepted(plan, v)).toList();
  }

  private boolean isAccepted(Plan plan, Verdict verdict) {
    boolean fault = verdict.outcome() != Outcome.FINE && verdict.outcome() != Outcome.CANNOT_TELL;
    if (!fault || engine.book().find(verdict.rule()).map(RuleText::protectsPeople).orElse(false)) {
      return false;
    }
    for (Accepted accepted : plan.accepted()) {
      if (accepted.rule().equals(verdict.rule()) && accepted.where().equals(verdict.at().name())) {
        return true;
      }
    }
    return false;
  }
}
