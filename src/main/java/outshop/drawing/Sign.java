package outshop.drawing;

/** What a box stands for, and so which sign it bears. */
public enum Sign {
  CHARGER,
  PACK,
  PLUG,
  JACK,
  FUSE,
  SWITCH,
  CONNECTOR,
  /** A cable between vehicles. */
  CABLE,
  REGULATOR,
  RECEIVER,
  DECODER,
  CAPACITOR,
  RESISTOR,
  MOTOR,
  BULB,
  LED,
  HEATER,
  SPEAKER,
  /** A joint between wires. */
  SPLICE,
  /** The frame. */
  METAL,
  RAIL;

  /** Where charge comes from: it stands at the left. */
  boolean isSource() {
    return this == CHARGER || this == PACK;
  }

  /** What the power is for: it stands at the right. */
  boolean isLoad() {
    return switch (this) {
      case MOTOR, BULB, LED, HEATER, SPEAKER -> true;
      default -> false;
    };
  }

  /** Whether it only passes current on, by contacts or a resistance drawn in its box. */
  public boolean passes() {
    return switch (this) {
      case FUSE, SWITCH, CONNECTOR, CABLE, RESISTOR -> true;
      default -> false;
    };
  }

  /** Whether one of its terminals may be met from both sides of its box. */
  boolean isMetFromBothSides() {
    return switch (this) {
      case PACK, JACK, PLUG, SPLICE, METAL, RAIL -> true;
      default -> false;
    };
  }
}
