package outshop.figures;

import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Said;

/**
 * A hold-up capacitor and how it is charged.
 *
 * @param limited {@code yes} if it or its decoder limits the charging current, {@code no} if
 *     neither does
 * @param inrushAmps at most, when it is joined empty and nothing limits it; absent where something
 *     does
 * @param inrush the same in words
 */
public record HoldUp(At at, Fitted part, Said limited, Amount inrushAmps, String inrush) {}
