package outshop.search;

import java.util.List;
import java.util.OptionalDouble;
import outshop.catalogue.Part;

/**
 * A combination that works.
 *
 * @param parts in the order of the places
 * @param price of the parts in the open places; empty if one of them has none
 * @param hours it runs on a charge; empty if that is not known
 * @param mostHours by what assumptions leave open
 * @param litres the boxes of the parts take together; empty if one of them has no size
 * @param untold how much the full check cannot tell
 */
public record Found(
    List<Part> parts,
    OptionalDouble price,
    OptionalDouble hours,
    OptionalDouble mostHours,
    OptionalDouble litres,
    int warnings,
    int untold) {
  public Found {
    parts = List.copyOf(parts);
  }
}
