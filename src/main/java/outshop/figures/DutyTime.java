package outshop.figures;

import java.util.List;
import outshop.units.Amount;

/**
 * How long one charge lasts if the locomotive did one thing all the time.
 *
 * @param meanAmps from the packs, at nominal volts
 * @param hours on one charge
 */
public record DutyTime(Duty duty, Amount meanAmps, Amount hours) {

  /** What it does all the time. */
  public enum Duty {
    STANDING("standing all the time"),
    CRUISING("cruising all the time"),
    HALF_AND_HALF("half cruising, half slipping"),
    SLIPPING("slipping all the time");

    private final String words;

    Duty(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** The duties, the least current first as a rule; none without a pack. */
  public static List<DutyTime> of(Bench bench) {
    return EnduranceFigures.duties(bench);
  }

  /** What one charge gives, in ampere-hours; run time is this by the mean current. */
  public static Amount usableCharge(Bench bench) {
    return EnduranceFigures.usableCharge(bench);
  }

  /** The mean current at which one charge lasts as long as the plan asks, in amps. */
  public static Amount allowedAmps(Bench bench) {
    return EnduranceFigures.allowedAmps(bench);
  }
}
