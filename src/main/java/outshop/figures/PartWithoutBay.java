package outshop.figures;

import outshop.circuit.At;

/**
 * A part with a size for which the plan names no bay.
 *
 * @param standing {@code room} where a bay has room beside what is in it, also for the other parts
 *     without a bay; {@code crowded} where one has room for it alone but they do not all go in;
 *     {@code nowhere}; {@code unknown}
 * @param bay a bay with room for it; empty if there is none
 */
public record PartWithoutBay(At at, Standing standing, String bay) {}
