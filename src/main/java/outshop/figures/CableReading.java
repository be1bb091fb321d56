package outshop.figures;

import outshop.circuit.At;
import outshop.units.Said;

/** Whether the reading of a cable that was looked at stays steady while it is bent. */
public record CableReading(At at, Said steady) {}
