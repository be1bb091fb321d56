package outshop.plan;

import outshop.catalogue.Part;
import outshop.input.Place;
import outshop.units.Amount;

/**
 * One wire as the plan lists it.
 *
 * @param from a terminal, such as {@code pack.plus}
 * @param to a terminal
 * @param wire the wire used, a part of kind wire
 * @param length in metres, this one wire
 */
public record WireRow(String from, String to, Part wire, Amount length, Place place) {
  /** Whether neither the row nor the plan says which wire it is. */
  boolean withoutItsOwn() {
    return wire.id().startsWith("wiring.wires.");
  }

  WireRow of(Part other) {
    return new WireRow(from, to, other, length, place);
  }
}
