package outshop.figures;

import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;

/**
 * A part that delivers current (a pack, a receiver's output, a decoder's motor output), and what is
 * drawn from it.
 *
 * @param sustainedAmps the worse of slipping and cruising
 * @param peakAmps wheels blocked, or the logged start surge where that is more
 * @param peakMoment when that is, in words; empty where it is not known
 */
public record Delivery(
    At at, Fitted part, Amount sustainedAmps, Amount peakAmps, String peakMoment) {

  public Kind kind() {
    return part.kind();
  }

  /** The rating for lasting current that leaves a quarter in reserve. */
  public Amount neededAmps() {
    return Demands.withReserve(part.name(), sustainedAmps);
  }

  /** Whether it is stated to switch off by itself when overloaded. */
  public boolean cutsOut() {
    return cutout().is("yes");
  }

  /** Whether it switches off by itself when overloaded; a pack's protection is another matter. */
  public Said cutout() {
    return part.is(Kind.PACK)
        ? new Said.Word("no", Origin.STANDARD, part.name() + ": overload cutout")
        : part.said("overload_cutout");
  }
}
