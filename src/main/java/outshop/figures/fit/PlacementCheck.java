package outshop.figures.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Checks an arrangement against what was asked, box by box and pair by pair, and knows nothing of
 * how it was found.
 */
public final class PlacementCheck {
  private PlacementCheck() {}

  /**
   * What is wrong with an arrangement; nothing if it is right.
   *
   * @param clearance to every wall and between any two boxes, in micrometres
   */
  public static List<String> faults(
      Size room, long clearance, List<Box> boxes, List<Placed> placed) {
    List<String> faults = new ArrayList<>();
    TreeSet<String> asked = new TreeSet<>(boxes.stream().map(Box::name).toList());
    TreeSet<String> there = new TreeSet<>(placed.stream().map(Placed::name).toList());
    if (!asked.equals(there) || placed.size() != boxes.size()) {
      faults.add("placed are " + there + " of " + asked);
    }
    for (Placed one : placed) {
      boolean allowed =
          boxes.stream()
              .anyMatch(b -> b.name().equals(one.name()) && b.ways().contains(one.lying()));
      if (!allowed) {
        faults.add(one.name() + " may not lie as " + one.lying());
      }
      for (int axis = 0; axis < 3; axis++) {
        if (one.from(axis) < clearance || one.to(axis) > room.side(axis) - clearance) {
          faults.add(one.name() + " is too near a wall on axis " + axis);
        }
      }
    }
    for (int i = 0; i < placed.size(); i++) {
      for (int j = i + 1; j < placed.size(); j++) {
        if (gap(placed.get(i), placed.get(j)) < clearance) {
          faults.add(placed.get(i).name() + " is too near " + placed.get(j).name());
        }
      }
    }
    return faults;
  }

  /** The widest gap between two boxes on any axis; below nothing if they overlap. */
  private static long gap(Placed one, Placed other) {
    long widest = Long.MIN_VALUE;
    for (int axis = 0; axis < 3; axis++) {
      widest =
          Math.max(
              widest, Math.max(one.from(axis) - other.to(axis), other.from(axis) - one.to(axis)));
    }
    return widest;
  }
}
