package outshop.search;

import java.util.List;
import outshop.catalogue.Part;
import outshop.plan.OpenPart;

/**
 * One place that a plan leaves open, and what may stand in it.
 *
 * @param choices the parts as the plan would hold them, in the order of their ids
 * @param added whether the plan does not name the place, but needs a part of its kind
 */
public record Slot(OpenPart open, List<Part> choices, boolean added) {
  public Slot {
    choices = List.copyOf(choices);
  }

  public String name() {
    return open.name();
  }
}
