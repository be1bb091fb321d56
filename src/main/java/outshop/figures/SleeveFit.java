package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A wire, and whether one of the plan's shrink sleeves fits a joint in it.
 *
 * @param joint diameter of a soldered joint of two such wires
 * @param insulation outer diameter of the wire
 */
public record SleeveFit(At at, Amount joint, Amount insulation, Standing standing) {}
