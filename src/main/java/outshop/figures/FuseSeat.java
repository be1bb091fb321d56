package outshop.figures;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Amount;

/**
 * Where a fuse sits in the circuit.
 *
 * @param pack the pack that feeds it, the first one where several do
 * @param pole the pack's pole on its side, {@code plus} or {@code minus}
 * @param near its end towards that pole
 * @param far its other end
 */
record FuseSeat(Fitted fuse, Link link, Fitted pack, String pole, String near, String far) {
  private static final List<String> POLES = List.of("plus", "minus");

  /** The seat of every fuse that a pack can reach, in the order of the plan. */
  static List<FuseSeat> all(Bench bench, List<InState> states) {
    return bench.plan().parts(Kind.FUSE).stream()
        .flatMap(fuse -> of(bench, states, fuse).stream())
        .toList();
  }

  private static Optional<FuseSeat> of(Bench bench, List<InState> states, Fitted fuse) {
    Optional<Link> found =
        bench.circuit().links().stream()
            .filter(l -> l.sort() == Link.Sort.FUSE && l.name().equals(fuse.name()))
            .findFirst();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Link link = found.get();
    for (Fitted pack : bench.plan().parts(Kind.PACK)) {
      for (String pole : POLES) {
        for (InState in : states) {
          Set<String> met = in.joins().component(pack.name() + "." + pole, l -> !l.equals(link));
          if (met.contains(link.from()) || met.contains(link.to())) {
            boolean from = met.contains(link.from());
            String near = from ? link.from() : link.to();
            return Optional.of(
                new FuseSeat(fuse, link, pack, pole, near, Reach.otherEnd(link, near)));
          }
        }
      }
    }
    return Optional.empty();
  }

  At at() {
    return Places.of(fuse);
  }

  /** What is marked on it, in amps; absent for one that resets itself. */
  Amount ratedAmps() {
    return fuse.amount("rated_amps");
  }

  /** The pack's terminal on the fuse's side. */
  String poleTerminal() {
    return pack.name() + "." + pole;
  }

  /** The pack's terminal on the other side, towards which a fault current returns. */
  String returnTerminal() {
    return pack.name() + (pole.equals("plus") ? ".minus" : ".plus");
  }

  /** Whether it stands for fuses that reset themselves and others that do not. */
  boolean isOpen() {
    return fuse.isOpen("style") || (fuse.said("style").isUnsaid() && fuse.isOpen("hold_amps"));
  }

  /** Whether it is one that resets itself. Where its build is not stated, a hold current tells. */
  boolean resettable() {
    return fuse.said("style").is("resettable")
        || (fuse.said("style").isUnsaid() && fuse.amount("hold_amps").isKnown());
  }

  /** Every pack that can feed its near end without passing a fuse. */
  List<Fitted> feeders(Bench bench, List<InState> states) {
    Set<String> met = new LinkedHashSet<>();
    for (InState in : states) {
      met.addAll(in.joins().component(near, l -> l.sort() != Link.Sort.FUSE));
    }
    List<Fitted> feeders =
        bench.plan().parts(Kind.PACK).stream()
            .filter(p -> POLES.stream().anyMatch(pole -> met.contains(p.name() + "." + pole)))
            .toList();
    return feeders.isEmpty() ? List.of(pack) : feeders;
  }

  /**
   * The conductors a fault current through it may take: past its far end up to the next fuse, and
   * back to the pack's other pole, in any state.
   */
  Set<Link> protectedLinks(Bench bench, List<InState> states) {
    Set<Link> links = new LinkedHashSet<>();
    for (InState in : states) {
      links.addAll(in.joins().reachedWithoutFuse(far));
      links.addAll(in.joins().reachedWithoutFuse(returnTerminal()));
    }
    Reach circuit = new Reach(bench.circuit().links());
    links.removeAll(PackLead.of(bench.plan(), circuit, poleTerminal()).links());
    links.removeIf(Reach::isChargingClip);
    return links;
  }
}
