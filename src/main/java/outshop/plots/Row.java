package outshop.plots;

import java.util.List;
import java.util.Optional;
import outshop.circuit.LoadCase;
import outshop.units.Amount;

/**
 * What belongs together in a plot: the values of one part, of one current, of one duty.
 *
 * @param name short, for the drawing; may hold a user's own words
 * @param described in full, for the text beside it
 */
public record Row(String name, String described, List<Mark> marks) {
  public Row {
    marks = List.copyOf(marks);
  }

  /** The first mark of a meaning. */
  public Optional<Mark> find(Meaning meaning) {
    return marks.stream().filter(m -> m.meaning() == meaning).findFirst();
  }

  /** The value of a meaning, if the row has it and it is known. */
  public Optional<Amount.Known> known(Meaning meaning) {
    return find(meaning).filter(Mark::isKnown).map(m -> m.amount().get());
  }

  /** The value of a meaning with the pack so full, if the row has it and it is known. */
  public Optional<Amount.Known> known(Meaning meaning, LoadCase.Charge charge) {
    return marks.stream()
        .filter(m -> m.meaning() == meaning && m.charge().filter(c -> c == charge).isPresent())
        .filter(Mark::isKnown)
        .map(m -> m.amount().get())
        .findFirst();
  }
}
