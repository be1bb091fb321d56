package outshop.figures;

import java.util.List;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * What a fuse's standard says of its opening time at one current.
 *
 * @param amps the current
 * @param shortestSeconds for which it must hold; absent where the standard promises nothing
 * @param longestSeconds after which it must have opened; absent where the standard sets no such
 *     time
 */
public record FuseGate(Amount amps, Amount shortestSeconds, Amount longestSeconds) {

  /** The gates of a fitted fuse, the smallest current first; none where no standard is named. */
  public static List<FuseGate> of(Fitted fuse) {
    Said standard = fuse.said("gate");
    return FuseGates.of(standard.or("")).map(FuseGates::gates).orElse(List.of()).stream()
        .map(gate -> of(fuse, standard.or(""), gate))
        .toList();
  }

  private static FuseGate of(Fitted fuse, String standard, FuseGates.Gate gate) {
    return new FuseGate(
        Amount.computed(
            fuse.name() + ": current of a gate",
            Unit.AMPS,
            "rated current x multiple of the gate",
            v -> v[0] * gate.multiple(),
            fuse.amount("rated_amps")),
        gate.shortestSeconds() > 0
            ? seconds(gate.shortestSeconds(), "shortest opening time", standard)
            : new Amount.Absent("shortest opening time"),
        Double.isFinite(gate.longestSeconds())
            ? seconds(gate.longestSeconds(), "longest opening time", standard)
            : new Amount.Absent("longest opening time"));
  }

  private static Amount seconds(double seconds, String what, String standard) {
    return Amount.known(seconds, Unit.SECONDS, Origin.STANDARD, what, standard);
  }
}
