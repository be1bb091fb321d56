package outshop.circuit;

import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Unit;

/**
 * What is known of one lamp, bulb, LED or smoke heater, whether it is the locomotive's own or a new
 * part.
 *
 * @param amps a filament's or heater's current at its rated voltage; a LED's rated current
 * @param coldOhms of a filament
 * @param forwardVolts of a LED
 * @param seriesOhms a resistor built into a LED
 */
public record LampValues(
    Device device,
    Amount ratedVolts,
    Amount amps,
    Amount coldOhms,
    Amount forwardVolts,
    Amount seriesOhms) {

  public static LampValues of(Plan plan, Device device) {
    return device.part().map(part -> ofPart(device, part)).orElseGet(() -> ofPlan(plan, device));
  }

  private static LampValues ofPart(Device device, Fitted part) {
    Amount none = new Amount.Absent(device.name());
    return switch (device.sort()) {
      case BULB ->
          new LampValues(
              device,
              part.amount("rated_volts"),
              part.amount("rated_milliamps")
                  .orElse(
                      over(
                          device.name() + ": current",
                          part.amount("rated_watts"),
                          part.amount("rated_volts"),
                          part.amount("rated_milliamps"))),
              part.amount("cold_ohms"),
              none,
              none);
      case LED ->
          new LampValues(
              device,
              none,
              part.amount("rated_milliamps"),
              none,
              part.amount("forward_volts"),
              part.amount("built_in_ohms"));
      case SMOKE_HEATER ->
          new LampValues(
              device,
              part.amount("rated_volts"),
              part.amount("rated_amps")
                  .orElse(
                      over(
                          device.name() + ": current",
                          part.amount("rated_volts"),
                          part.amount("resistance_ohms"),
                          part.amount("rated_amps"))),
              none,
              none,
              none);
      default -> throw new IllegalArgumentException("no lamp: " + device);
    };
  }

  private static LampValues ofPlan(Plan plan, Device device) {
    Amount none = new Amount.Absent(device.name());
    if (device.sort() == Device.Sort.SMOKE_HEATER) {
      String at = "locomotive.smoke." + device.name() + ".";
      return new LampValues(
          device, plan.amount(at + "rated"), plan.amount(at + "amps"), none, none, none);
    }
    String at = "locomotive.lamps." + device.name() + ".";
    if (device.sort() == Device.Sort.LED) {
      Amount rated =
          plan.amount(at + "amps")
              .orElse(
                  Amount.assumed(
                      0.010,
                      0.005,
                      0.020,
                      Unit.AMPS,
                      device.name() + ": rated current",
                      "not stated; usual for a small LED"));
      return new LampValues(device, none, rated, none, plan.amount(at + "forward_volts"), none);
    }
    return new LampValues(
        device,
        plan.amount(at + "rated"),
        plan.amount(at + "amps"),
        plan.amount(at + "forward"),
        none,
        none);
  }

  /** One over another, or what is missing of the stated one. */
  private static Amount over(String label, Amount top, Amount bottom, Amount otherwise) {
    Amount quotient =
        Amount.computed(label, Unit.AMPS, "quotient of its ratings", v -> v[0] / v[1], top, bottom);
    return quotient.isKnown() ? quotient : otherwise;
  }

  /**
   * What a lamp draws in the circuit where nobody stated it: carried from nothing to a large
   * bulb's, so that it never decides silently.
   */
  public Amount ampsOrUsual() {
    return amps.orElse(
        Amount.assumed(
            0.08,
            0.005,
            0.25,
            Unit.AMPS,
            device.name() + ": current",
            "not stated; usual for a lamp of this size"));
  }

  /** A fixed zero, for loads that are switched off in a case. */
  static Amount off(String name) {
    return Amount.known(0, Unit.AMPS, Origin.STANDARD, name, "switched off");
  }
}
