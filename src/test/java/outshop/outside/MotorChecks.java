package outshop.outside;

import java.util.List;
import outshop.circuit.LoadCase;
import outshop.circuit.MotorValues;
import outshop.figures.Bench;

/** A motor's resistance from a blocked reading, as a plan states it. */
final class MotorChecks {
  private static final String MOTOR = "locomotive.motors.main.";

  private MotorChecks() {}

  static List<OutsideCheck> all() {
    return new CheckList("motor")
        .from(Sources.COLLEGE + "section 23.6, module m42411, problems")
        .printed("120-volts", "10.0 A at 120 V", "12.00", "ohm", () -> ohms("120 V", "10.0 A"))
        .printed("48-volts", "120 A at 48.0 V", "0.400", "ohm", () -> ohms("48.0 V", "120 A"))
        .from(Sources.COLLEGE + "section 23.6, module m42411, problem; answer worked out")
        .printed("toy", "12.0 A at 6.00 V", "0.500", "ohm", () -> ohms("6.00 V", "12.0 A"))
        .printed("20-amps", "20.0 A at 120 V", "6.00", "ohm", () -> ohms("120 V", "20.0 A"))
        .all();
  }

  private static double ohms(String volts, String blocked) {
    Bench bench =
        Trial.base().with(MOTOR + "blocked", blocked).with(MOTOR + "blocked_at", volts).bench();
    return MotorValues.of(
            bench.plan(), "main", bench.pack().orElseThrow().volts(LoadCase.Charge.NOMINAL))
        .ohms()
        .get()
        .value();
  }
}
