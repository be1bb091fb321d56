package outshop.figures;

import java.util.List;
import outshop.circuit.At;
import outshop.units.Said;
import outshop.units.Want;

/** One half of a mated connector, and whether the other half is on the list. */
public record ConnectorHalves(At at, Said otherHalf, List<Want> wants) {}
