package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import outshop.catalogue.Kind;
import outshop.circuit.Circuit;
import outshop.circuit.Joins;
import outshop.circuit.PackValues;
import outshop.circuit.State;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Said;
import outshop.units.Unit;

/** A pack, or packs that follow one another in series; what a charger sees between its leads. */
record Chain(List<Fitted> packs) {

  Chain {
    packs = List.copyOf(packs);
  }

  /** Every chain of a plan: each pack once, packs in series together. */
  static List<Chain> of(Bench bench) {
    List<Fitted> packs = bench.plan().parts(Kind.PACK);
    List<Chain> chains = new ArrayList<>();
    for (Fitted pack : packs) {
      if (packs.stream().noneMatch(before -> follows(bench.circuit(), before, pack))) {
        chains.add(from(bench.circuit(), pack, packs));
      }
    }
    return chains;
  }

  private static Chain from(Circuit circuit, Fitted first, List<Fitted> packs) {
    List<Fitted> chain = new ArrayList<>(List.of(first));
    Optional<Fitted> next = Optional.of(first);
    while (next.isPresent()) {
      Fitted last = next.get();
      next =
          packs.stream().filter(p -> !chain.contains(p) && follows(circuit, last, p)).findFirst();
      next.ifPresent(chain::add);
    }
    return new Chain(chain);
  }

  /** Whether one pack's minus is joined to the other's plus, and their other poles are not. */
  private static boolean follows(Circuit circuit, Fitted one, Fitted other) {
    if (one.equals(other)) {
      return false;
    }
    for (State state : circuit.states()) {
      Joins joins = new Joins(circuit, state);
      if (joins.joined(one.name() + ".minus", other.name() + ".plus")
          && !joins.joined(one.name() + ".plus", other.name() + ".minus")
          && !joins.joined(one.name() + ".plus", one.name() + ".minus")) {
        return true;
      }
    }
    return false;
  }

  /** Its outer terminals. */
  Ends ends() {
    return new Ends(packs.get(0).name() + ".plus", packs.get(packs.size() - 1).name() + ".minus");
  }

  /** The names of its packs. */
  String name() {
    return String.join(" + ", packs.stream().map(Fitted::name).toList());
  }

  /** The chemistry of its first pack. */
  Said chemistry() {
    return packs.get(0).said("chemistry");
  }

  Amount cells() {
    return total("cells in series", Unit.COUNT, packs.stream().map(p -> PackValues.of(p).cells()));
  }

  Amount fullVolts() {
    return total("full", Unit.VOLTS, packs.stream().map(p -> PackValues.of(p).fullVolts()));
  }

  /**
   * What it is charged to.
   *
   * @param most whether the upper end is meant where nothing is stated and the kind of cell leaves
   *     a range
   */
  Amount chargeVolts(boolean most) {
    return total("charge volts", Unit.VOLTS, packs.stream().map(p -> chargeVolts(p, most)));
  }

  private Amount total(String what, Unit unit, Stream<Amount> each) {
    List<Amount> all = each.toList();
    return all.size() == 1 ? all.get(0) : Amount.sum(name() + ": " + what, unit, all);
  }

  private static Amount chargeVolts(Fitted pack, boolean most) {
    Said chemistry = pack.said("chemistry");
    Amount stated = pack.amount("charge_volts");
    if (!stated.isMissing() || pack.isOpen("charge_volts")) {
      return stated;
    }
    Amount full = pack.amount("full_volts");
    if (CellCharge.lithium(chemistry) && full.isKnown()) {
      return full;
    }
    Optional<CellCharge> cell = CellCharge.of(chemistry);
    if (cell.isEmpty()) {
      return stated;
    }
    double volts = most ? cell.get().mostVolts() : cell.get().leastVolts();
    return Amount.computed(
        pack.name() + ": charge volts",
        Unit.VOLTS,
        "cells x " + volts + " V, usual for " + chemistry.or(""),
        v -> v[0] * volts,
        PackValues.of(pack).cells());
  }
}
