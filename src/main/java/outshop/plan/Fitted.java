package outshop.plan;

import java.util.Set;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.Amount;
import outshop.units.Said;

/**
 * A part as it is fitted: a catalogue part (or one written in the plan) under a name of the plan's
 * own.
 *
 * @param name such as {@code receiver} or {@code speaker-left}; unique in a plan
 * @param place where the plan names it
 */
public record Fitted(String name, Part part, Place place) {
  public Kind kind() {
    return part.kind();
  }

  public boolean is(Kind kind) {
    return part.kind() == kind;
  }

  /**
   * Whether it is no thing of its own but a material named by its key, such as {@code wiring.wire}.
   */
  public boolean isMaterial() {
    return name.indexOf('.') >= 0;
  }

  /** The number in a column of the part, labelled with the name it has in the plan. */
  public Amount amount(String column) {
    return part.amount(column, name);
  }

  /** The word in a column of the part. */
  public Said said(String column) {
    return part.said(column, name);
  }

  /** The words of a cell that may hold several. */
  public Set<String> several(String column) {
    return part.several(column);
  }

  /** Name and title, such as {@code receiver (radio receiver, 4 A)}. */
  public String described() {
    return name.equals(part.title()) ? name : name + " (" + part.title() + ")";
  }
}
