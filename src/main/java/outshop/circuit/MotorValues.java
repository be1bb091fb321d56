package outshop.circuit;

import java.util.List;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * What is known of a motor.
 *
 * @param ohms resistance with the wheels held: test voltage / blocked current, or the winding as
 *     measured
 * @param slippingAmps as measured; assumed from the blocked current where only that is known
 */
public record MotorValues(
    String name, Amount ohms, Amount slippingAmps, Amount cruisingAmps, Amount ratedVolts) {

  /**
   * Share of the blocked current at nominal volts that slipping wheels draw, where nobody measured
   * it: the wheels of a garden locomotive slip well before the motor stalls. From memory of such
   * locomotives; carried as the whole range.
   */
  private static final double[] SLIPPING_OF_BLOCKED = {0.5, 0.3, 0.8};

  public static MotorValues of(Plan plan, String name, Amount packNominalVolts) {
    String at = "locomotive.motors." + name + ".";
    Amount ohms = ohms(plan, name, at);
    Amount slipping = plan.amount(at + "slipping");
    if (slipping.isMissing() && ohms.isKnown() && packNominalVolts.isKnown()) {
      Amount share =
          Amount.assumed(
              SLIPPING_OF_BLOCKED[0],
              SLIPPING_OF_BLOCKED[1],
              SLIPPING_OF_BLOCKED[2],
              Unit.SHARE,
              name + ": slipping",
              "not measured; taken as a share of the blocked current at the pack's nominal volts");
      slipping =
          Amount.computed(
              name + " slipping",
              Unit.AMPS,
              "share x pack nominal / resistance",
              v -> v[0] * v[1] / v[2],
              share,
              packNominalVolts,
              ohms);
    }
    return new MotorValues(
        name, ohms, slipping, plan.amount(at + "cruising"), plan.amount(at + "rated"));
  }

  private static Amount ohms(Plan plan, String name, String at) {
    Amount blocked = plan.amount(at + "blocked");
    Amount test = plan.amount(at + "blocked_at");
    if (blocked.isKnown() && test.isKnown()) {
      return Amount.computed(
          name + ": resistance blocked",
          Unit.OHMS,
          "test voltage / blocked current",
          v -> v[0] / v[1],
          test,
          blocked);
    }
    Amount winding = plan.amount(at + "winding");
    if (winding.isKnown()) {
      return winding.named(name + ": winding resistance");
    }
    return blocked.isMissing() ? blocked : new Amount.Missing(((Amount.Missing) test).wants());
  }

  /** Of several motors, the current they draw together in one case. */
  public static Amount together(String label, List<Amount> each) {
    return Amount.sum(label, Unit.AMPS, each);
  }
}
