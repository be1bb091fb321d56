package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A wire, and the contact that it ends in. A small gauge number is a thick wire.
 *
 * @param wire its two ends
 * @param thickestGauge the smallest number that the contact takes
 * @param thinnestGauge the largest number that the contact takes
 * @param insulation its outer diameter
 * @param widestInsulation that the contact takes; absent where the part's data know no such limit
 */
public record ContactFit(
    At at,
    String wire,
    Amount gauge,
    Amount thickestGauge,
    Amount thinnestGauge,
    Amount insulation,
    Amount widestInsulation) {}
