package outshop.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Columns;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.units.Said;

/**
 * The terminals of everything that can be wired. A terminal is written {@code NAME.TERMINAL}, with
 * the name the thing has in the plan, such as {@code receiver.in+}; {@link #PLAIN} stand for
 * themselves, and {@code splice.NAME} is a joint between wires under a name of the user's own.
 */
public final class Terminals {
  /** What can be met electrically without belonging to a part. */
  public static final List<String> PLAIN = List.of("frame", "left-rail", "right-rail");

  /** The owner of joints between wires. */
  public static final String SPLICE = "splice";

  /** The owner under which the locomotive's old speaker is wired. */
  public static final String OLD_SPEAKER = "old_speaker";

  private static final List<String> POLES = List.of("plus", "minus");
  private static final List<String> ENDS = List.of("a", "b");

  private Terminals() {}

  /**
   * The terminals a part is known to have. Where its table leaves open how many (contacts, poles,
   * outputs), only the first; where it leaves a switch's function open, those of an on-off switch.
   */
  public static List<String> of(Part part) {
    return list(part, false);
  }

  /**
   * Whether a part has this terminal, or may have it as far as its table tells; used so that a
   * blank cell never makes a wiring wrong.
   */
  public static boolean mayHave(Part part, String terminal) {
    return list(part, true).contains(terminal);
  }

  /** The terminals of a motor. */
  public static List<String> ofMotor() {
    return POLES;
  }

  /**
   * The terminals of a lamp of the locomotive.
   *
   * @param kind as stated in the plan; anything but {@code led} has two ends alike
   */
  public static List<String> ofLamp(String kind) {
    return kind.equals("led") ? List.of("anode", "cathode") : ENDS;
  }

  /** The terminals of a smoke heater of the locomotive. */
  public static List<String> ofSmoke() {
    return ENDS;
  }

  /** The terminals of the locomotive's old speaker. */
  public static List<String> ofOldSpeaker() {
    return POLES;
  }

  /**
   * The terminals of a thing by its name in a plan: part, motor, lamp, smoke heater, old speaker;
   * empty if the plan names no such thing.
   */
  public static Optional<List<String>> of(Plan plan, String name) {
    Optional<Fitted> part = plan.part(name).filter(f -> !f.isMaterial());
    if (part.isPresent()) {
      return Optional.of(of(part.get().part()));
    }
    if (plan.names("locomotive.motors").contains(name)) {
      return Optional.of(ofMotor());
    }
    if (plan.names("locomotive.lamps").contains(name)) {
      return Optional.of(ofLamp(plan.said("locomotive.lamps." + name + ".kind").or("unknown")));
    }
    if (plan.names("locomotive.smoke").contains(name)) {
      return Optional.of(ofSmoke());
    }
    return name.equals(OLD_SPEAKER) ? Optional.of(ofOldSpeaker()) : Optional.empty();
  }

  private static List<String> list(Part part, boolean widest) {
    return switch (part.kind()) {
      case CHARGER, PACK, SPEAKER, CAPACITOR -> POLES;
      case PLUG -> List.of("pin", "sleeve");
      case JACK -> List.of("pin", "sleeve", "break");
      case FUSE, RESISTOR, BULB, SMOKE_HEATER -> ENDS;
      case LED -> ofLamp("led");
      case SWITCH -> ofSwitch(part, widest);
      case CONNECTOR, CABLE -> contacts(count(part, "contacts_count", widest));
      case REGULATOR -> List.of("in+", "in-", "out+", "out-");
      case RECEIVER -> List.of("in+", "in-", "out-a", "out-b");
      case DECODER -> ofDecoder(count(part, "function_count", widest));
      case WIRE, SLEEVE, HANDSET -> List.of();
    };
  }

  private static List<String> ofSwitch(Part part, boolean widest) {
    Said function = part.said("function");
    List<String> poles = new ArrayList<>();
    if (!function.is("changeover")) {
      poles.addAll(ENDS);
    }
    if (function.is("changeover") || (function.isUnsaid() && widest)) {
      poles.addAll(List.of("common", "run", "charge"));
    }
    List<String> terminals = new ArrayList<>();
    int count = count(part, "poles_count", widest);
    for (int pole = 1; pole <= count; pole++) {
      for (String terminal : poles) {
        terminals.add(pole == 1 ? terminal : terminal + pole);
      }
    }
    return terminals;
  }

  private static List<String> contacts(int count) {
    List<String> terminals = new ArrayList<>();
    for (int contact = 1; contact <= count; contact++) {
      terminals.add(contact + "a");
      terminals.add(contact + "b");
    }
    return terminals;
  }

  private static List<String> ofDecoder(int outputs) {
    List<String> terminals = new ArrayList<>(List.of("in-a", "in-b", "motor+", "motor-", "common"));
    for (int output = 1; output <= outputs; output++) {
      terminals.add("out-" + output);
    }
    terminals.add("speaker+");
    terminals.add("speaker-");
    return terminals;
  }

  /** The stated count; where it is blank, one, or the most that is plausible. */
  private static int count(Part part, String column, boolean widest) {
    double most = Columns.require(part.kind(), column).high();
    Double stated = part.numbers().get(column);
    if (stated == null || stated.isNaN() || stated < 1) {
      return widest ? (int) most : 1;
    }
    return (int) Math.min(stated, Math.max(most, 100));
  }

  /** Whether things of this kind have terminals at all. */
  static boolean hasAny(Kind kind) {
    return kind != Kind.WIRE && kind != Kind.SLEEVE && kind != Kind.HANDSET;
  }
}
