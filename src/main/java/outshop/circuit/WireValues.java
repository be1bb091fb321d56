package outshop.circuit;

import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Unit;

/** Resistance and ampacity of a fitted wire. */
public final class WireValues {
  private WireValues() {}

  /** Resistance of one wire at 20 C, in ohms: copper's resistivity x length / cross-section. */
  public static Amount ohms(String label, Fitted wire, Amount length) {
    Amount area = wire.amount("area_mm2");
    if (area.isKnown()) {
      return Amount.computed(
          label,
          Unit.OHMS,
          "1.7241e-8 ohm m x length / cross-section",
          v -> atLeast(Gauge.ohmsPerMetre(v[0]) * v[1]),
          area,
          length);
    }
    return ohms(label, wire.amount("awg").orElse(usualGauge(wire.name())), length);
  }

  /** As {@link #ohms(String, Fitted, Amount)}, for a bare gauge. */
  public static Amount ohms(String label, Amount awg, Amount length) {
    return Amount.computed(
        label,
        Unit.OHMS,
        "1.7241e-8 ohm m x length / cross-section of the gauge",
        v -> atLeast(Gauge.ohmsPerMetre(Gauge.areaMm2(v[0])) * v[1]),
        awg,
        length);
  }

  /**
   * For a wire whose size nobody stated: any gauge used in such a locomotive. Its ampacity stays
   * unknown.
   */
  static Amount usualGauge(String where) {
    return Amount.assumed(
        22,
        16,
        30,
        Unit.GAUGE,
        where + ": awg",
        "not stated; any gauge usual in such a locomotive");
  }

  /**
   * The chassis ampacity of a wire's gauge, in amps. Missing if neither gauge nor cross-section is
   * stated.
   */
  public static Amount chassisAmps(Fitted wire) {
    Amount area = wire.amount("area_mm2");
    Amount awg = wire.amount("awg");
    Amount gauge =
        awg.isKnown() || !area.isKnown()
            ? awg
            : Amount.computed(
                wire.name() + ": gauge",
                Unit.GAUGE,
                "the thickest gauge not above the cross-section",
                v -> Gauge.gaugeAtMost(v[0]),
                area);
    if (gauge instanceof Amount.Known g
        && Gauge.chassisAmps((int) Math.round(g.value())).isEmpty()) {
      return Amount.missing(
          wire.name(), "ampacity", "the wire maker's table: the handbook's ends at 32 AWG");
    }
    return Amount.computed(
        wire.name() + ": chassis ampacity",
        Unit.AMPS,
        "handbook table by gauge",
        v -> Gauge.chassisAmps((int) Math.round(v[0])).orElseThrow(),
        gauge);
  }

  /**
   * A wire of no length still joins: a tenth of a milliohm keeps the network solvable and decides
   * nothing.
   */
  private static double atLeast(double ohms) {
    return Math.max(ohms, 1e-4);
  }
}
