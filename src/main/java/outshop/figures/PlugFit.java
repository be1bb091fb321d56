package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A plug and the charging jack that it is to go into.
 *
 * @param at the jack
 * @param plug the name of the plug, or of the charger whose lead ends in it
 * @param bore of the plug
 * @param pin of the jack, as the bore of the plug that fits over it
 * @param outer diameter of the plug
 * @param takes the outer diameter that the jack takes
 */
public record PlugFit(
    At at, String plug, Amount bore, Amount pin, Amount outer, Amount takes, Standing standing) {}
