package outshop.figures;

import outshop.circuit.At;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Said;

/**
 * What a receiver does when it hears nothing any more.
 *
 * @param stops whether it stops the locomotive by itself
 */
public record LinkLoss(At at, Said stops) {

  static LinkLoss of(Fitted receiver) {
    return new LinkLoss(Places.of(receiver), receiver.said("stops_on_link_loss"));
  }
}
