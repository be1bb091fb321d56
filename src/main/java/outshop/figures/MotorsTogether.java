package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;

/**
 * Two or more motors on one drive.
 *
 * @param greatestOhms with the wheels held, of the motor that draws least
 * @param leastOhms of the motor that draws most
 * @param alike {@code fine}, {@code kinds}, {@code ratings} or unknown
 * @param difference in what they differ, in words that fill a sentence
 */
public record MotorsTogether(
    At at, Amount greatestOhms, Amount leastOhms, Standing alike, String difference) {}
