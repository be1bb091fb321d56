package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * Function outputs wanted, and those there are.
 *
 * @param wanted how many are to be switched apart
 * @param there how many all decoders of the plan have
 */
public record FunctionCount(At at, Amount wanted, Amount there) {}
