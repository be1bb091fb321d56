package outshop.circuit;

import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Said;
import outshop.units.Want;

/** How a plan's charger comes to the pack. */
public final class ChargingWay {
  private ChargingWay() {}

  /**
   * Whether the charger meets the pack itself, with the pack unplugged from everything else: so
   * says the pattern, or a plan wired by hand has neither a jack nor leads of the charger.
   */
  public static boolean packTakenOut(Plan plan) {
    Said pattern = plan.said("wiring.pattern");
    return pattern.is("pack-taken-out")
        || (pattern.is("by-wire")
            && plan.parts(Kind.JACK).isEmpty()
            && plan.parts(Kind.CHARGER).stream().anyMatch(c -> !wiredByHand(plan, c)));
  }

  /** Whether the plan lists a wire that starts or ends at this part. */
  public static boolean wiredByHand(Plan plan, Fitted part) {
    return plan.wires().stream().anyMatch(w -> touches(w.from(), w.to(), part));
  }

  static boolean touches(String from, String to, Fitted part) {
    String owner = part.name() + ".";
    return from.startsWith(owner) || to.startsWith(owner);
  }

  /** Whether a pack has a connector of its own, at which it can be unplugged. */
  static boolean hasOwnConnector(Fitted pack) {
    Said half = pack.said("connector_half");
    return half.is("pins") || half.is("sockets");
  }

  /**
   * The pole on the inner contact of the plug that goes into the jack: the plug's own word; where
   * it is soldered on by hand, the word of the charger that it is soldered to, as its markings are
   * followed.
   *
   * @return {@code plus} or {@code minus}, or unsaid where neither of them says so
   */
  public static Said plugCentre(Fitted charger, Optional<Fitted> plug) {
    Said marked = charger.said("plug_centre");
    Said own = plug.map(p -> p.said("centre")).orElse(marked);
    if (isPole(own) || own.isUnsaid()) {
      return own;
    }
    if (plug.isPresent() && (isPole(marked) || marked.isUnsaid())) {
      return marked;
    }
    return new Said.Unsaid(
        new Want(
            plug.map(Fitted::name).orElse(charger.name()),
            plug.isPresent() ? "centre" : "plug_centre",
            "A voltmeter on the plug: red probe inside, reading positive is plus."));
  }

  /** Whether a word names a pole. */
  public static boolean isPole(Said said) {
    return said.is("plus") || said.is("minus");
  }
}
