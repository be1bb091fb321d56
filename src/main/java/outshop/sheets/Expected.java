package outshop.sheets;

import java.util.List;
import java.util.Optional;
import outshop.units.Unit;
import outshop.units.Want;

/** What a step of the bench sheet expects the meter to show. */
public sealed interface Expected {

  /** In what the meter reads. */
  default Unit unit() {
    if (this instanceof Window window) {
      return window.from().unit();
    }
    return this instanceof Untold untold ? untold.unit() : Unit.OHMS;
  }

  /** Whether a continuity tester answers it. */
  default boolean isContinuity() {
    return this instanceof Joined || this instanceof Apart;
  }

  /**
   * Continuity.
   *
   * @param atMost the greatest reading that still counts as joined, in ohms; empty where a value on
   *     the way is missing
   */
  record Joined(Optional<Figure> atMost) implements Expected {}

  /**
   * No continuity.
   *
   * @param atLeast the least reading that still counts as apart, in ohms
   */
  record Apart(Figure atLeast) implements Expected {}

  /**
   * A reading within a window.
   *
   * @param to empty where no reading is too high
   */
  record Window(Figure from, Optional<Figure> to) implements Expected {}

  /** No window can be given for want of values; the reading is noted all the same. */
  record Untold(Unit unit, List<Want> wants) implements Expected {
    public Untold {
      wants = List.copyOf(wants);
    }
  }
}
