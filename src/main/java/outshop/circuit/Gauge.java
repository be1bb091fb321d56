package outshop.circuit;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * Copper wire by American wire gauge.
 *
 * <p>Sources. Diameter: ASTM B258, {@code 0.127 mm x 92^((36 - n) / 39)}. Resistance: International
 * Annealed Copper Standard (IEC 60028), 1.7241e-8 ohm metre at 20 C. Chassis ampacity: the "maximum
 * amps for chassis wiring" column of the <i>Handbook of Electronic Tables and Formulas</i>, as
 * given by Floyd, <i>Electric Circuit Fundamentals</i>, 2nd ed.; gauges 15 and 17, which the values
 * at hand skip, lie between their neighbours.
 */
public final class Gauge {
  /** Ohm metres, annealed copper at 20 C. */
  public static final double COPPER_OHM_METRES = 1.7241e-8;

  /** Change of copper's resistance a kelvin, at 20 C. */
  public static final double COPPER_PER_KELVIN = 0.00393;

  private static final Map<Integer, Double> CHASSIS_AMPS =
      Map.ofEntries(
          Map.entry(14, 32.0),
          Map.entry(16, 22.0),
          Map.entry(18, 16.0),
          Map.entry(19, 14.0),
          Map.entry(20, 11.0),
          Map.entry(21, 9.0),
          Map.entry(22, 7.0),
          Map.entry(23, 4.7),
          Map.entry(24, 3.5),
          Map.entry(25, 2.7),
          Map.entry(26, 2.2),
          Map.entry(27, 1.7),
          Map.entry(28, 1.4),
          Map.entry(29, 1.2),
          Map.entry(30, 0.86),
          Map.entry(31, 0.70),
          Map.entry(32, 0.53));

  private Gauge() {}

  /** Diameter of a solid wire, in millimetres. */
  public static double diameterMm(double awg) {
    return 0.127 * Math.pow(92, (36 - awg) / 39);
  }

  /** Cross-section, in square millimetres. */
  public static double areaMm2(double awg) {
    double d = diameterMm(awg);
    return Math.PI / 4 * d * d;
  }

  /** Resistance a metre at 20 C, in ohms, of a cross-section in square millimetres. */
  public static double ohmsPerMetre(double areaMm2) {
    return COPPER_OHM_METRES / (areaMm2 * 1e-6);
  }

  /**
   * The greatest current a single wire inside equipment carries by the handbook, in amps; empty for
   * a gauge it does not list.
   */
  public static OptionalDouble chassisAmps(int awg) {
    if (awg < 14) {
      // Thicker than any listed: at least as good as the thickest that is.
      return OptionalDouble.of(CHASSIS_AMPS.get(14));
    }
    Double listed = CHASSIS_AMPS.get(awg);
    if (listed == null && (awg == 15 || awg == 17)) {
      return chassisAmps(awg + 1);
    }
    return listed == null ? OptionalDouble.empty() : OptionalDouble.of(listed);
  }

  /**
   * The thinnest gauge whose cross-section is no larger than this one, for wire sold by square
   * millimetres.
   */
  public static int gaugeAtMost(double areaMm2) {
    int awg = 8;
    while (awg < 40 && areaMm2(awg) > areaMm2 * (1 + 1e-9)) {
      awg++;
    }
    return awg;
  }
}
