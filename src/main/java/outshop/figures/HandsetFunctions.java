package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * The functions that are wanted against those a handset can switch.
 *
 * @param wanted absent where nobody said how many
 */
public record HandsetFunctions(At at, Amount wanted, Amount offered) {}
