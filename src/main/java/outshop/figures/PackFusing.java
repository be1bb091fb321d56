package outshop.figures;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Circuit;
import outshop.circuit.Link;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Origin;
import outshop.units.Said;

/**
 * A pack and the fuses between it and everything else.
 *
 * <p>A conductor is exposed if, in some state, conductors past the pack's own lead can be fed from
 * its plus without passing a fuse and, in the same state, others from its minus: then the two can
 * meet and nothing opens. A fuse in either lead close to the pack prevents that, and so does one
 * stated to be inside the pack.
 *
 * @param hasFuse whether any fuse stands on any way from the pack
 * @param fused the same in words, {@code yes} or {@code no}
 * @param guarded {@code no} if a conductor is exposed in some state
 * @param guards what guards it, in words
 * @param inside what is known of a fuse inside the pack, in words
 * @param first the exposed conductor nearest to its plus
 * @param conductors every exposed conductor on that side
 * @param when the states, in words
 */
public record PackFusing(
    At at,
    boolean hasFuse,
    Said fused,
    Said guarded,
    String guards,
    String inside,
    String first,
    String conductors,
    String when) {

  static List<PackFusing> all(Bench bench, List<InState> states) {
    List<PackFusing> all = new ArrayList<>();
    for (Fitted pack : bench.plan().parts(Kind.PACK)) {
      String plus = pack.name() + ".plus";
      boolean wired = !new Reach(bench.circuit().links()).at(plus).isEmpty();
      if (wired) {
        all.add(of(bench, states, pack));
      }
    }
    return all;
  }

  private static PackFusing of(Bench bench, List<InState> states, Fitted pack) {
    Reach circuit = new Reach(bench.circuit().links());
    PackLead plus = PackLead.of(bench.plan(), circuit, pack.name() + ".plus");
    PackLead minus = PackLead.of(bench.plan(), circuit, pack.name() + ".minus");
    Amount inside = pack.amount("internal_fuse_amps");
    Exposed exposed =
        inside.isKnown() ? Exposed.NONE : Exposed.of(states, pack.name(), plus, minus);
    boolean hasFuse = inside.isKnown() || meetsFuse(bench.plan(), states, pack.name());
    List<String> words = exposed.links().stream().map(Reach::words).toList();
    return new PackFusing(
        Places.of(pack),
        hasFuse,
        yes(hasFuse, pack.name() + ": a fuse on its way"),
        yes(exposed.links().isEmpty(), pack.name() + ": everything behind a fuse"),
        guards(plus, minus, inside),
        inside.isMissing() ? "and none inside it is stated" : "and it has none inside",
        words.isEmpty() ? "nothing" : words.get(0) + more(words.size() - 1),
        String.join(", ", words),
        exposed.when());
  }

  private static Said yes(boolean yes, String label) {
    return new Said.Word(yes ? "yes" : "no", Origin.PLAN, label);
  }

  private static String more(int others) {
    return others == 0 ? "" : " and " + others + " more";
  }

  private static String guards(PackLead plus, PackLead minus, Amount inside) {
    List<Link> fuses = plus.fused() ? plus.fuses() : minus.fuses();
    if (inside.isKnown() || fuses.isEmpty()) {
      return inside.isKnown() ? "a fuse inside it" : "a fuse";
    }
    return String.join(" and ", fuses.stream().map(Link::name).distinct().toList());
  }

  private static boolean meetsFuse(Plan plan, List<InState> states, String pack) {
    for (InState in : states) {
      Set<String> met = new LinkedHashSet<>(in.joins().component(pack + ".plus"));
      met.addAll(in.joins().component(pack + ".minus"));
      boolean fuse =
          met.stream()
              .map(t -> plan.part(Circuit.owner(t)))
              .anyMatch(p -> p.filter(f -> f.is(Kind.FUSE)).isPresent());
      if (fuse) {
        return true;
      }
    }
    return false;
  }

  /** What is exposed on the plus side, and in which states. */
  private record Exposed(Set<Link> links, String when) {
    static final Exposed NONE = new Exposed(Set.of(), "");

    static Exposed of(List<InState> states, String pack, PackLead plus, PackLead minus) {
      Set<Link> links = new LinkedHashSet<>();
      List<InState> found = new ArrayList<>();
      for (InState in : states) {
        Set<Link> here = past(in, pack + ".plus", plus);
        if (!here.isEmpty() && !past(in, pack + ".minus", minus).isEmpty()) {
          links.addAll(here);
          found.add(in);
        }
      }
      if (found.isEmpty()) {
        return NONE;
      }
      boolean always = found.size() == states.size();
      return new Exposed(links, always ? "in every state" : "with " + found.get(0).state().words());
    }

    private static Set<Link> past(InState in, String pole, PackLead own) {
      Set<Link> reached = new LinkedHashSet<>(in.joins().reachedWithoutFuse(pole));
      reached.removeAll(own.links());
      reached.removeIf(Reach::isChargingClip);
      return reached;
    }
  }
}
