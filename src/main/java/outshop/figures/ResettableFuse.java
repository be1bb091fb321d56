package outshop.figures;

import java.util.List;
import outshop.circuit.At;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Exact;
import outshop.units.Said;
import outshop.units.Unit;

/**
 * A resettable fuse at work in its bay.
 *
 * @param sustainedAmps through it, the worse of cruising and slipping
 * @param holdAmps what it carries for ever at the temperature of its bay
 * @param tripSeconds the longest it takes to trip at its test current; absent where the pack gives
 *     that current for as long as it lasts
 * @param packSeconds how long the pack may give its peak current
 */
public record ResettableFuse(
    At at, Amount sustainedAmps, Amount holdAmps, Amount tripSeconds, Amount packSeconds) {

  /**
   * Temperature of the still air at which a hold current is stated, in degrees Celsius: the usual
   * definition of the hold current, read on a page that quotes it.
   */
  private static final double ROOM_CELSIUS = 25;

  static ResettableFuse of(Bench bench, FuseSeat seat) {
    Fitted fuse = seat.fuse();
    return new ResettableFuse(
        seat.at(),
        bench.cases().sustainedAmps(fuse.name()),
        hold(fuse, bayCelsius(bench, fuse)),
        trip(fuse, seat.pack()),
        seat.pack().amount("peak_seconds"));
  }

  private static Amount bayCelsius(Bench bench, Fitted fuse) {
    Said bay = bench.plan().said("parts." + fuse.name() + ".bay");
    return bay instanceof Said.Unsaid unsaid
        ? new Amount.Missing(List.of(unsaid.want()))
        : bench.plan().amount("locomotive.bays." + bay.or("") + ".celsius");
  }

  /**
   * The hold current in the bay: the room's up to 25 C, from there a straight line to the warmer
   * one stated. Derating curves bend downwards, so the line lies below them between its ends and
   * above them past the warmer end, where nothing is reckoned.
   */
  private static Amount hold(Fitted fuse, Amount celsius) {
    Amount room = fuse.amount("hold_amps");
    if (celsius instanceof Amount.Known bay && !Exact.above(bay.high(), ROOM_CELSIUS)) {
      return room;
    }
    Amount warm = fuse.amount("warm_celsius");
    boolean beyond =
        celsius instanceof Amount.Known bay
            && warm instanceof Amount.Known w
            && Exact.above(bay.value(), w.value());
    if (beyond) {
      return Amount.missing(
          fuse.name(),
          "hold_warm_amps",
          "the column of its data sheet's derating table for the bay's temperature or above");
    }
    return Amount.computed(
        fuse.name() + ": holds in its bay",
        Unit.AMPS,
        "hold current on a straight line from 25 C to the warmer temperature",
        v -> v[0] - (v[0] - v[1]) * (v[3] - ROOM_CELSIUS) / (v[2] - ROOM_CELSIUS),
        room,
        fuse.amount("hold_warm_amps"),
        warm,
        celsius);
  }

  private static Amount trip(Fitted fuse, Fitted pack) {
    Amount test = fuse.amount("trip_test_amps");
    Amount continuous = pack.amount("continuous_amps");
    if (test.isMissing()) {
      return test;
    }
    boolean harmless =
        test instanceof Amount.Known t
            && continuous instanceof Amount.Known c
            && !Exact.above(t.value(), c.value());
    return harmless
        ? new Amount.Absent("a current the pack cannot give")
        : fuse.amount("trip_seconds");
  }
}
