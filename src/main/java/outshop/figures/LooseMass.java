package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * A part that nothing but tape, glue or its neighbours hold.
 *
 * @param heldBy what holds it, in words
 * @param mass in kilograms; missing also where it matters what holds the part and nobody said
 * @param mostMass what may be held like that
 */
public record LooseMass(At at, String heldBy, Amount mass, Amount mostMass) {}
