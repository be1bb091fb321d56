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
import outshop.plan.Fitted;
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

  /** The plan, with each usual value of its parts taken for itself. */
  private final Plan usualValues;

  private final Map<Asked, Part> blends = new ConcurrentHashMap<>();
  private final Map<String, Integer> pieces = new ConcurrentHashMap<>();
  private final AtomicLong checks = new AtomicLong();
  private final AtomicLong looks = new AtomicLong();

  private record Asked(int slot, BitSet set, Blend.End end, Blend.Usual usual) {}

  Trials(RuleEngine engine, Space space) {
    this.engine = engine;
    this.space = space;
    this.usualValues = withUsualValues(space.plan());
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

  /** One combination, to ask several pieces about it. */
  Single single(int[] point) {
    return new Single(bench(space.parts(point)));
  }

  /** One combination: its circuit is solved once, whoever asks. */
  final class Single {
    private final Bench bench;

    private Single(Bench bench) {
      this.bench = bench;
    }

    /** What one piece's rules find in it. */
    List<Verdict> check(int piece) {
      looks.incrementAndGet();
      return verdicts(bench, piece);
    }

    /** The full check's facts. */
    List<Object> facts() {
      return Facts.of(bench);
    }
  }

  /** What one piece's rules find in one combination. */
  List<Verdict> check(int[] point, int piece) {
    return single(point).check(piece);
  }

  /** Which columns of which place are read on the way to a piece's facts. */
  List<TreeSet<String>> read(int[] point, int piece) {
    return watched(point, piece).read();
  }

  /** What one piece's rules find in one combination, and what is read for it of each place. */
  Watch watched(int[] point, int piece) {
    List<TreeSet<String>> read = new ArrayList<>();
    List<Part> parts = new ArrayList<>();
    for (int s = 0; s < point.length; s++) {
      TreeSet<String> columns = new TreeSet<>();
      read.add(columns);
      parts.add(Blend.watched(space.part(s, point[s]), columns::add));
    }
    looks.incrementAndGet();
    List<Verdict> verdicts = verdicts(bench(parts), piece);
    for (int s = 0; s < point.length; s++) {
      if (read.get(s).contains(Loose.ALL)) {
        for (Column column : Columns.of(space.part(s, point[s]).kind())) {
          read.get(s).add(column.name());
        }
      }
    }
    return new Watch(verdicts, read);
  }

  /** What a piece's rules found, and the columns that were read, by place. */
  record Watch(List<Verdict> verdicts, List<TreeSet<String>> read) {}

  /** What the rules find in a cell: what holds for every combination of it. */
  List<Verdict> look(BitSet[] cell, Blend.End end) {
    looks.incrementAndGet();
    return counted(engine.verdicts(Facts.of(bench(blended(cell, end)))));
  }

  /**
   * As {@link #look(BitSet[], Blend.End)}, by one piece's rules alone. Where the piece looked at
   * one value out of a range, what it says of situations is left out: it need not hold for all. The
   * range of a usual value does not count: there each combination is looked at by the one value as
   * well. Nor does with how many contacts the circuit was built: more of them change nothing but at
   * the ends, which are looked at.
   */
  List<Verdict> look(BitSet[] cell, Blend.End end, int piece) {
    looks.incrementAndGet();
    Bench bench = bench(blended(cell, end));
    Peeks.clear();
    List<?> facts = Facts.piece(bench, piece);
    boolean peeked = Peeks.seen();
    List<Verdict> verdicts = counted(engine.verdicts(facts));
    boolean doubtful = peeked && !verdicts.stream().allMatch(Verdict::compared);
    return doubtful && peeks(cell, end, piece)
        ? verdicts.stream().filter(Verdict::compared).toList()
        : verdicts;
  }

  /** As {@link #look(BitSet[], Blend.End, int)}, of what is compared alone: that holds for all. */
  List<Verdict> comparisons(BitSet[] cell, Blend.End end, int piece) {
    return comparisons(bench(blended(cell, end)), piece);
  }

  private List<Verdict> comparisons(Bench bench, int piece) {
    looks.incrementAndGet();
    return verdicts(bench, piece).stream().filter(Verdict::compared).toList();
  }

  /** Whether a piece looks at one value out of a range that the parts themselves span. */
  private boolean peeks(BitSet[] cell, Blend.End end, int piece) {
    Bench bench = benchOfUsualValues(cell, end);
    Peeks.clear();
    Facts.piece(bench, piece);
    return Peeks.seen();
  }

  /**
   * What a piece's comparisons find in a cell where each blank with a usual value has that value.
   * What stands here at the kindest end is what each combination's own values say.
   */
  List<Verdict> lookByValue(BitSet[] cell, Blend.End end, int piece) {
    return comparisons(benchOfUsualValues(cell, end), piece);
  }

  /** How long it runs on a charge, over all combinations of a cell. */
  Amount hours(BitSet[] cell) {
    looks.incrementAndGet();
    Bench bench = bench(blended(cell, Blend.End.HIGH));
    for (int piece = 0; piece < Facts.pieces(); piece++) {
      if (piece == pieces.getOrDefault("", piece)) {
        for (Object fact : Facts.piece(bench, piece)) {
          if (fact instanceof RunTime runTime) {
            pieces.put("", piece);
            return runTime.hours();
          }
        }
      }
    }
    return new Amount.Absent("run time");
  }

  /** The piece whose facts a rule judges; empty if it has nothing to say about this one. */
  OptionalInt piece(String rule, int[] point) {
    Integer known = pieces.get(rule);
    if (known != null) {
      return OptionalInt.of(known);
    }
    Single single = single(point);
    for (int piece = 0; piece < Facts.pieces(); piece++) {
      if (single.check(piece).stream().anyMatch(v -> v.rule().equals(rule))) {
        pieces.put(rule, piece);
        return OptionalInt.of(piece);
      }
    }
    return OptionalInt.empty();
  }

  private List<Part> blended(BitSet[] cell, Blend.End end) {
    return blended(cell, end, Blend.Usual.RANGE);
  }

  private List<Part> blended(BitSet[] cell, Blend.End end, Blend.Usual usual) {
    if (blends.size() > MOST_KEPT) {
      blends.clear();
    }
    List<Part> parts = new ArrayList<>();
    for (int s = 0; s < cell.length; s++) {
      Blend.End which = cell[s].cardinality() == 1 ? Blend.End.LOW : end;
      parts.add(
          blends.computeIfAbsent(
              new Asked(s, (BitSet) cell[s].clone(), which, usual), this::blend));
    }
    return parts;
  }

  private Part blend(Asked asked) {
    Slot slot = space.slots().get(asked.slot());
    return asked.usual() == Blend.Usual.RANGE
        ? Blend.of(slot, asked.set(), asked.end())
        : Blend.withUsualValues(slot, asked.set(), asked.end());
  }

  private Bench benchOfUsualValues(BitSet[] cell, Blend.End end) {
    return Bench.of(
        space.plan(usualValues, blended(cell, end, Blend.Usual.VALUE)), space.problems());
  }

  private static Plan withUsualValues(Plan plan) {
    List<Fitted> parts = new ArrayList<>();
    for (Fitted fitted : plan.parts()) {
      parts.add(withUsualValues(fitted));
    }
    for (Fitted fitted : plan.materials()) {
      parts.add(withUsualValues(fitted));
    }
    return plan.withParts(parts);
  }

  private static Fitted withUsualValues(Fitted fitted) {
    return new Fitted(fitted.name(), Blend.withUsualValues(fitted.part()), fitted.place());
  }

  private Bench bench(List<Part> parts) {
    return Bench.of(space.plan(parts), space.problems());
  }

  private List<Verdict> verdicts(Bench bench, int piece) {
    return counted(engine.verdicts(Facts.piece(bench, piece)));
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
