package outshop.figures;

import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * A decoder's function output, or all of them together, and what hangs there.
 *
 * @param together whether it is all outputs of the decoder
 * @param steadyAmps with everything on
 * @param steadyLimitAmps what the decoder allows all the time
 * @param inrushAmps in the moment its filaments are cold; absent where it feeds none
 * @param inrushLimitAmps what the decoder allows for a moment
 */
public record OutputLoad(
    At at,
    Fitted decoder,
    boolean together,
    Amount steadyAmps,
    Amount steadyLimitAmps,
    Amount inrushAmps,
    Amount inrushLimitAmps) {}
