package outshop.circuit;

import java.util.Locale;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;
import outshop.plan.Plan;

/** Finds the station of the power path that a part, device or link belongs to. */
public final class Places {
  private Places() {}

  public static At of(Fitted part) {
    return part.derived(
        At.class, fitted -> new At(station(fitted.kind()), fitted.name(), fitted.described()));
  }

  public static At of(Device device) {
    return device
        .part()
        .map(Places::of)
        .orElseGet(
            () -> new At(station(device.sort()), device.name(), called(device), called(device)));
  }

  private static String called(Device device) {
    String kind =
        switch (device.sort()) {
          case MOTOR -> "motor";
          case BULB, LED -> "lamp";
          case SMOKE_HEATER -> "smoke heater";
          default -> "";
        };
    boolean told = kind.isEmpty() || device.name().toLowerCase(Locale.ROOT).contains(kind);
    return told ? device.name() : kind + " " + device.name();
  }

  /** A wire, by its two ends. */
  public static At wire(String name) {
    return new At(Station.WIRING, name, "wire " + name);
  }

  /** The whole plan. */
  public static At of(Plan plan) {
    return new At(Station.PLAN, "plan", "the plan");
  }

  /** Something that is not a part, at a station. */
  public static At at(Station station, String name) {
    return new At(station, name, name);
  }

  public static Station station(Kind kind) {
    return switch (kind) {
      case CHARGER -> Station.CHARGER;
      case PLUG, JACK -> Station.JACK;
      case PACK -> Station.PACK;
      case FUSE -> Station.FUSE;
      case SWITCH -> Station.SWITCH;
      case CONNECTOR, CABLE, WIRE, SLEEVE -> Station.WIRING;
      case HANDSET, RECEIVER -> Station.RADIO;
      case DECODER, CAPACITOR, REGULATOR -> Station.DECODER;
      case RESISTOR, BULB, LED, SMOKE_HEATER -> Station.LIGHTS;
      case SPEAKER -> Station.SOUND;
    };
  }

  private static Station station(Device.Sort sort) {
    return switch (sort) {
      case MOTOR -> Station.MOTOR;
      case SPEAKER -> Station.SOUND;
      default -> Station.LIGHTS;
    };
  }
}
