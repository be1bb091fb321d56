package outshop.figures.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Tries every box at every whole place in every way, by sizes alone: slow, and nothing to get
 * wrong. Boxes of whole sides that fit at all also fit at whole places, as each can be pushed
 * towards a corner until it meets a wall or another box.
 */
final class Grid {
  private final Size room;
  private final long clearance;
  private final List<Box> boxes;
  private final List<Placed> placed = new ArrayList<>();

  Grid(Size room, long clearance, List<Box> boxes) {
    this.room = room;
    this.clearance = clearance;
    this.boxes = boxes;
  }

  /** Whether there is an arrangement. */
  boolean holds() {
    if (placed.size() == boxes.size()) {
      return true;
    }
    Box box = boxes.get(placed.size());
    for (Size way : box.ways()) {
      for (long x = clearance; x + way.along() + clearance <= room.along(); x++) {
        for (long y = clearance; y + way.across() + clearance <= room.across(); y++) {
          for (long z = clearance; z + way.up() + clearance <= room.up(); z++) {
            if (free(x, y, z, way)) {
              placed.add(new Placed(box.name(), way, x, y, z));
              if (holds()) {
                return true;
              }
              placed.remove(placed.size() - 1);
            }
          }
        }
      }
    }
    return false;
  }

  private boolean free(long x, long y, long z, Size way) {
    for (Placed other : placed) {
      boolean alongside =
          x < other.along() + other.lying().along() + clearance
              && other.along() < x + way.along() + clearance;
      boolean beside =
          y < other.across() + other.lying().across() + clearance
              && other.across() < y + way.across() + clearance;
      boolean level =
          z < other.up() + other.lying().up() + clearance && other.up() < z + way.up() + clearance;
      if (alongside && beside && level) {
        return false;
      }
    }
    return true;
  }
}
