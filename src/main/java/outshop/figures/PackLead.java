package outshop.figures;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import outshop.circuit.Link;
import outshop.plan.Plan;

/**
 * The pack's own lead at one of its poles: the wires and connector contacts from its terminal up to
 * the first fuse or the first branching point, whichever comes first. Where it branches at a mere
 * joint, the branches that run straight into a fuse are part of it. A lead that runs into a part
 * without meeting a fuse or a branching point is none, so that all of it counts as fed by the pack.
 *
 * @param links the conductors of the lead
 * @param fuses the fuses at its end, if every end of it is a fuse
 */
record PackLead(Set<Link> links, List<Link> fuses) {

  /**
   * The lead at a pole.
   *
   * @param circuit every conductor, whatever the state
   * @param pole a terminal, such as {@code pack.plus}
   */
  static PackLead of(Plan plan, Reach circuit, String pole) {
    return new Walk(plan, circuit).from(pole);
  }

  /** Whether nothing past this lead can be fed without passing a fuse. */
  boolean fused() {
    return !fuses.isEmpty();
  }

  private record Walk(Plan plan, Reach circuit) {
    PackLead from(String pole) {
      Set<Link> chain = new LinkedHashSet<>();
      String at = pole;
      while (true) {
        List<Link> onward = onward(at, chain);
        if (onward.isEmpty()) {
          return new PackLead(Set.of(), List.of());
        }
        boolean joint = at.equals(pole) || Reach.isJoint(plan, at);
        boolean unbranched = onward.size() == 1 && joint && isLead(onward.get(0));
        if (!unbranched) {
          return joint ? branching(chain, at, onward) : new PackLead(chain, List.of());
        }
        chain.add(onward.get(0));
        at = Reach.otherEnd(onward.get(0), at);
      }
    }

    private PackLead branching(Set<Link> chain, String at, List<Link> onward) {
      Set<Link> links = new LinkedHashSet<>(chain);
      List<Link> fuses = new ArrayList<>();
      boolean allFused = true;
      for (Link first : onward) {
        Optional<PackLead> branch = fusedBranch(at, first);
        branch.ifPresent(b -> links.addAll(b.links()));
        branch.ifPresent(b -> fuses.addAll(b.fuses()));
        allFused &= branch.isPresent();
      }
      return new PackLead(links, allFused ? fuses.stream().distinct().toList() : List.of());
    }

    /** The branch that begins with a conductor, if every end of it is a fuse. */
    private Optional<PackLead> fusedBranch(String at, Link first) {
      Set<Link> tree = new LinkedHashSet<>();
      List<Link> fuses = new ArrayList<>();
      Set<String> seen = new HashSet<>(Set.of(at));
      Deque<String> open = new ArrayDeque<>();
      List<Link> here = List.of(first);
      String from = at;
      while (true) {
        for (Link link : here) {
          String next = Reach.otherEnd(link, from);
          if (link.sort() == Link.Sort.FUSE) {
            fuses.add(link);
          } else if (!isLead(link) || (!seen.contains(next) && !Reach.isJoint(plan, next))) {
            return Optional.empty();
          } else if (tree.add(link) && seen.add(next)) {
            open.add(next);
          }
        }
        if (open.isEmpty()) {
          return fuses.isEmpty() ? Optional.empty() : Optional.of(new PackLead(tree, fuses));
        }
        from = open.remove();
        here = onward(from, tree);
      }
    }

    private List<Link> onward(String at, Set<Link> without) {
      return circuit.at(at).stream()
          .filter(link -> !Reach.isChargingClip(link) && !without.contains(link))
          .toList();
    }

    private static boolean isLead(Link link) {
      return link.sort() == Link.Sort.WIRE || link.sort() == Link.Sort.CONTACT;
    }
  }
}
