package outshop.circuit;

import java.util.Optional;
import outshop.plan.Fitted;

/**
 * Something that hangs on terminals and is more than a conductor.
 *
 * @param name its name in the plan; its terminals are {@code name.terminal}
 * @param part the fitted part, where it is one; motors and lamps of the locomotive have none
 */
public record Device(String name, Sort sort, Optional<Fitted> part) {

  /** What a device is. */
  public enum Sort {
    PACK,
    CHARGER,
    RECEIVER,
    DECODER,
    REGULATOR,
    CAPACITOR,
    MOTOR,
    BULB,
    LED,
    SMOKE_HEATER,
    RESISTOR,
    SPEAKER
  }

  /** The full name of one of its terminals. */
  public String terminal(String terminal) {
    return name + "." + terminal;
  }
}
