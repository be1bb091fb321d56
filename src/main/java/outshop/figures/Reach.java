package outshop.figures;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Circuit;
import outshop.circuit.Link;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.plan.Terminals;

/** Walks along conductors: what meets at a terminal, and how far one gets. */
final class Reach {
  private final Map<String, List<Link>> byTerminal = new HashMap<>();

  Reach(Collection<Link> links) {
    for (Link link : links) {
      byTerminal.computeIfAbsent(link.from(), t -> new ArrayList<>()).add(link);
      byTerminal.computeIfAbsent(link.to(), t -> new ArrayList<>()).add(link);
    }
  }

  /** The conductors that meet at a terminal. */
  List<Link> at(String terminal) {
    return byTerminal.getOrDefault(terminal, List.of());
  }

  static String otherEnd(Link link, String terminal) {
    return link.from().equals(terminal) ? link.to() : link.from();
  }

  /**
   * Whether wires merely meet at this terminal: a joint, a contact of a connector or cable, or the
   * end of a fuse. Anything else is a part that hangs there.
   */
  static boolean isJoint(Plan plan, String terminal) {
    String owner = Circuit.owner(terminal);
    Optional<Kind> kind = plan.part(owner).map(Fitted::kind);
    return owner.equals(Terminals.SPLICE)
        || kind.filter(k -> k == Kind.CONNECTOR || k == Kind.CABLE || k == Kind.FUSE).isPresent();
  }

  /** Whether a contact is that of a charger put straight onto a pack that was taken out. */
  static boolean isChargingClip(Link link) {
    return link.sort() == Link.Sort.CONTACT && link.part().isEmpty();
  }

  /** A conductor in words, such as {@code wire pack.plus - fuse.a}. */
  static String words(Link link) {
    return link.sort() == Link.Sort.WIRE ? "wire " + link.name() : link.name();
  }
}
