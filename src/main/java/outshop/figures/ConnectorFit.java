package outshop.figures;

import outshop.circuit.At;
import outshop.units.Said;

/**
 * The connector on a charger's lead and that of the pack, which is taken out to charge.
 *
 * @param at the charger
 * @param pack the pack's name
 * @param charger the pattern of the charger's connector
 * @param onPack the pattern of the pack's connector
 */
public record ConnectorFit(At at, String pack, Said charger, Said onPack, Standing standing) {}
