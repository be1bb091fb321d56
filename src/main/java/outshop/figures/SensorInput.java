package outshop.figures;

import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;

/**
 * The sensor input of a decoder that needs one, and the most volts on board that could reach it. A
 * plan has no way of saying where a sensor's leads go.
 *
 * @param fullVolts at the decoder's input, pack full and no load
 * @param maximumVolts that the input stands
 */
public record SensorInput(At at, Amount fullVolts, Amount maximumVolts) {

  /** Whether steam sound is wanted that this decoder cannot time from the motor alone. */
  static boolean needed(Plan plan, Fitted decoder) {
    return decoder.said("sound").is("yes")
        && (decoder.several("sounds").isEmpty() || decoder.several("sounds").contains("steam"))
        && plan.said("wishes.sound").or("steam").equals("steam")
        && !decoder.said("chuff_input").is("no")
        && !decoder.said("chuff_from_motor").is("yes");
  }
}
