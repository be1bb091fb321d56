package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * How long a charge takes.
 *
 * @param at the charger
 * @param pack the names of what is charged at once
 * @param hours from empty to full
 * @param mostHours what the plan asks for, else what is usually put up with
 * @param timerHours when the charger's timer ends the charge
 */
public record ChargeTime(At at, String pack, Amount hours, Amount mostHours, Amount timerHours) {}
