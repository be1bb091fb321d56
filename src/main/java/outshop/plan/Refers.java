package outshop.plan;

import java.util.Map;

/** What the names at a key refer to. */
enum Refers {
  /** Nothing that a plan could settle: fixed words, or a station of the report. */
  NOTHING("a name"),
  /** Nothing: new names of the user's own. */
  OWN("a name of your own"),
  BAY("a bay under locomotive.bays"),
  SMOKE("a smoke heater"),
  LOAD("a lamp, bulb, LED or smoke heater"),
  RESISTOR("a fitted resistor"),
  DECODER("a fitted decoder"),
  LINK("a fitted connector or cable"),
  TERMINAL("a terminal such as \"motor.plus\""),
  /** A terminal, or the word {@code common} for the decoder's common lead. */
  TERMINAL_OR_COMMON("a terminal such as \"speaker.plus\", or common");

  private static final Map<String, Refers> BY_PATH =
      Map.ofEntries(
          Map.entry("vehicles", OWN),
          Map.entry("accepted.where", NOTHING),
          Map.entry("locomotive.frame.joined_to", TERMINAL),
          Map.entry("locomotive.bays.*.beside", SMOKE),
          Map.entry("locomotive.motors.*.joined_to", TERMINAL),
          Map.entry("locomotive.motors.*.left_in_leads", NOTHING),
          Map.entry("locomotive.pickups.joined_to", TERMINAL),
          Map.entry("parts.*.bay", BAY),
          Map.entry("outputs.*.feeds", LOAD),
          Map.entry("outputs.*.resistor", RESISTOR),
          Map.entry("outputs.*.decoder", DECODER),
          Map.entry("speakers.joined_to", TERMINAL_OR_COMMON),
          Map.entry("measured.joined.one", TERMINAL),
          Map.entry("measured.joined.other", TERMINAL),
          Map.entry("wiring.pack_through", LINK),
          Map.entry("wiring.feed_through", LINK),
          Map.entry("wiring.motor_through", LINK),
          Map.entry("wiring.lamps_through", LINK),
          Map.entry("wiring.wires.from", TERMINAL),
          Map.entry("wiring.wires.to", TERMINAL));

  private final String words;

  Refers(String words) {
    this.words = words;
  }

  /** What is expected, in words. */
  String words() {
    return words;
  }

  boolean isTerminal() {
    return this == TERMINAL || this == TERMINAL_OR_COMMON;
  }

  /**
   * What the names at a key refer to. Errors: {@link IllegalArgumentException} if that was never
   * decided for the key, which is a fault of the program.
   */
  static Refers of(Key key) {
    Refers refers = BY_PATH.get(key.path());
    if (refers == null) {
      throw new IllegalArgumentException("nobody decided what " + key.path() + " refers to");
    }
    return refers;
  }
}
