package outshop.figures;

import outshop.circuit.Joins;

/** Two terminals that belong together, such as a pack's poles. */
record Ends(String plus, String minus) {

  /** Whether both are joined to the other two, either way round. */
  boolean meet(Joins joins, Ends other) {
    return rightly(joins, other) || wrongly(joins, other);
  }

  /** Whether plus is joined to plus and minus to minus. */
  boolean rightly(Joins joins, Ends other) {
    return joins.joined(plus, other.plus) && joins.joined(minus, other.minus);
  }

  /** Whether plus is joined to minus and minus to plus. */
  boolean wrongly(Joins joins, Ends other) {
    return joins.joined(plus, other.minus) && joins.joined(minus, other.plus);
  }

  /** Whether at least one of them is joined to one of the others. */
  boolean touches(Joins joins, Ends other) {
    return crossed(joins, other)
        || joins.joined(plus, other.plus)
        || joins.joined(minus, other.minus);
  }

  /** Whether a plus is joined to a minus of the other, on at least one side. */
  boolean crossed(Joins joins, Ends other) {
    return joins.joined(plus, other.minus) || joins.joined(minus, other.plus);
  }
}
