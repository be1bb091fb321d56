package outshop.plots;

import java.util.Optional;
import outshop.circuit.LoadCase;
import outshop.units.Amount;

/**
 * One value of a plot.
 *
 * @param charge how full the pack is, where that matters
 * @param along the value on the other axis, where the plot has two
 */
public record Mark(
    Meaning meaning, Optional<LoadCase.Charge> charge, Optional<Amount> along, Amount amount) {

  static Mark of(Meaning meaning, Amount amount) {
    return new Mark(meaning, Optional.empty(), Optional.empty(), amount);
  }

  static Mark at(Meaning meaning, LoadCase.Charge charge, Amount amount) {
    return new Mark(meaning, Optional.of(charge), Optional.empty(), amount);
  }

  static Mark along(Meaning meaning, Amount along, Amount amount) {
    return new Mark(meaning, Optional.empty(), Optional.of(along), amount);
  }

  /** Whether everything is known that it takes to draw it. */
  public boolean isKnown() {
    return amount.isKnown() && along.map(Amount::isKnown).orElse(true);
  }
}
