package outshop.search;

import java.util.BitSet;

/**
 * Combinations of which one thing is known: for each place a set of choices, and every combination
 * of choices from these sets.
 *
 * @param sets by place; {@code null} where every choice is in it
 * @param works whether each of them works; else none does
 * @param reason the rule that rules them out, or that warns; empty where they work
 */
record Box(BitSet[] sets, boolean works, String reason) {

  /** A box with the full sets left out, so that they cost nothing. */
  static Box of(BitSet[] sets, BitSet[] all, boolean works, String reason) {
    BitSet[] kept = new BitSet[sets.length];
    for (int s = 0; s < sets.length; s++) {
      kept[s] = sets[s].equals(all[s]) ? null : sets[s];
    }
    return new Box(kept, works, reason);
  }

  boolean holds(int[] point) {
    for (int s = 0; s < sets.length; s++) {
      if (sets[s] != null && !sets[s].get(point[s])) {
        return false;
      }
    }
    return true;
  }

  /** Whether it leaves nothing of a cell's set at one place. */
  boolean holds(int slot, BitSet set) {
    if (sets[slot] == null) {
      return true;
    }
    BitSet rest = (BitSet) set.clone();
    rest.andNot(sets[slot]);
    return rest.isEmpty();
  }

  boolean holds(BitSet[] cell) {
    for (int s = 0; s < sets.length; s++) {
      if (!holds(s, cell[s])) {
        return false;
      }
    }
    return true;
  }

  /** Takes out of a cell's sets what does not lie in the box. */
  void narrow(BitSet[] cell) {
    for (int s = 0; s < sets.length; s++) {
      if (sets[s] != null) {
        cell[s].and(sets[s]);
      }
    }
  }

  /** The share of a cell that lies in the box, 0 to 1. */
  double share(BitSet[] cell) {
    double share = 1;
    for (int s = 0; s < sets.length && share > 0; s++) {
      if (sets[s] != null) {
        BitSet both = (BitSet) cell[s].clone();
        both.and(sets[s]);
        share *= (double) both.cardinality() / cell[s].cardinality();
      }
    }
    return share;
  }
}
