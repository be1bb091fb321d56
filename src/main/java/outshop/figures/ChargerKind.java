package outshop.figures;

import outshop.circuit.At;
import outshop.units.Said;

/**
 * Whether what charges the pack is a charger at all.
 *
 * @param at the charger
 * @param type {@code charger} or {@code plain-supply}
 */
public record ChargerKind(At at, Said type) {}
