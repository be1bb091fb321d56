package outshop.search;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import outshop.catalogue.Catalogue;
import outshop.catalogue.Kind;
import outshop.catalogue.Part;
import outshop.figures.Bench;
import outshop.figures.Facts;
import outshop.figures.Presence;
import outshop.input.Place;
import outshop.input.Problem;
import outshop.plan.Fitted;
import outshop.plan.OpenPart;
import outshop.plan.Plan;

/**
 * Everything that could be chosen: a plan, the places it leaves open, the parts for each.
 *
 * @param plan without a part in the open places
 * @param problems what the readers found in plan and catalogue
 */
public record Space(Plan plan, List<Problem> problems, List<Slot> slots) {
  public Space {
    problems = List.copyOf(problems);
    slots = List.copyOf(slots);
  }

  /**
   * The places that a plan leaves open.
   *
   * @param add whether a place is added for each kind that the plan needs and has no part of
   */
  public static Space of(
      Plan plan, List<OpenPart> open, boolean add, Catalogue catalogue, List<Problem> problems) {
    TreeMap<String, Slot> slots = new TreeMap<>();
    for (OpenPart place : open) {
      slots.put(place.name(), slot(place, catalogue, false));
    }
    if (add) {
      for (Kind kind : missing(plan, problems)) {
        boolean has = slots.values().stream().anyMatch(s -> s.open().kind() == kind);
        if (!has && plan.part(kind.word()).isEmpty()) {
          slots.put(kind.word(), slot(place(plan, kind), catalogue, true));
        }
      }
    }
    List<Slot> ordered = new ArrayList<>(slots.values());
    ordered.sort((a, b) -> a.open().kind().compareTo(b.open().kind()));
    return new Space(plan, problems, ordered);
  }

  private static OpenPart place(Plan plan, Kind kind) {
    return new OpenPart(
        kind.word(),
        kind,
        java.util.Map.of(),
        java.util.Map.of(),
        Optional.empty(),
        Place.whole(plan.file()));
  }

  private static Slot slot(OpenPart place, Catalogue catalogue, boolean added) {
    return new Slot(
        place, catalogue.of(place.kind()).stream().map(place::filledWith).toList(), added);
  }

  /** The kinds that the plan is said to lack, and a fuse where it has none. */
  private static List<Kind> missing(Plan plan, List<Problem> problems) {
    List<Kind> kinds = new ArrayList<>();
    for (Object fact : Facts.of(Bench.of(plan, problems))) {
      if (fact instanceof Presence presence) {
        Kind.of(presence.situation()).ifPresent(kinds::add);
      }
    }
    if (plan.parts(Kind.FUSE).isEmpty()) {
      kinds.add(Kind.FUSE);
    }
    return kinds;
  }

  /** How many combinations there are. */
  public BigInteger size() {
    return size(all());
  }

  /** How many combinations a cell holds. */
  static BigInteger size(BitSet[] cell) {
    BigInteger size = BigInteger.ONE;
    for (BitSet set : cell) {
      size = size.multiply(BigInteger.valueOf(set.cardinality()));
    }
    return size;
  }

  /** The cell of all combinations. */
  BitSet[] all() {
    BitSet[] all = new BitSet[slots.size()];
    for (int s = 0; s < all.length; s++) {
      all[s] = new BitSet();
      all[s].set(0, slots.get(s).choices().size());
    }
    return all;
  }

  Part part(int slot, int choice) {
    return slots.get(slot).choices().get(choice);
  }

  /** The parts of one combination. */
  public List<Part> parts(int[] point) {
    List<Part> parts = new ArrayList<>();
    for (int s = 0; s < point.length; s++) {
      parts.add(part(s, point[s]));
    }
    return parts;
  }

  /** The plan with these parts in the open places. */
  public Plan plan(List<Part> parts) {
    return plan(plan, parts);
  }

  /** As {@link #plan(List)}, of a plan that differs from this one only in what it knows. */
  Plan plan(Plan alike, List<Part> parts) {
    List<Fitted> fitted = new ArrayList<>();
    for (int s = 0; s < parts.size(); s++) {
      OpenPart open = slots.get(s).open();
      fitted.add(new Fitted(open.name(), parts.get(s), open.place()));
    }
    return alike.with(fitted);
  }
}
