package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A charger's voltage and the voltage that the cells behind it are charged to.
 *
 * @param at the charger
 * @param pack the pack's name, or the names of packs in series
 * @param madeFor the number of cells the charger is made for
 * @param cells in series
 * @param volts the most that the charger puts out
 * @param packVolts what the pack is charged to
 * @param mostVolts the same with the tolerance that cells stand
 */
public record ChargerVolts(
    At at,
    String pack,
    Amount madeFor,
    Amount cells,
    Amount volts,
    Amount packVolts,
    Amount mostVolts) {}
