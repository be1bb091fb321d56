package outshop.figures.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import outshop.units.Exact;

/**
 * The question whether boxes go into a room, sides parallel to its walls, with a clearance kept to
 * every wall and between any two boxes.
 *
 * @param room the inside of the bay
 * @param clearance in micrometres
 * @param steps how many steps the search may take before it gives up unsettled
 */
public record Packing(Size room, long clearance, List<Box> boxes, long steps) {
  /** More boxes than this in one bay are not searched. */
  private static final int MOST_BOXES = 30;

  public Packing {
    boxes = List.copyOf(boxes);
  }

  /**
   * The answer. With every box grown by the clearance on its far sides and the room shortened by
   * it, boxes that do not overlap keep the clearance to each other and to every wall.
   */
  public Arrangement answer() {
    Size inner = room.shrunk(clearance);
    double filled = 0;
    List<Box> grown = new ArrayList<>();
    for (Box box : boxes) {
      Box with = new Box(box.name(), box.ways().stream().map(w -> w.grown(clearance)).toList());
      List<Size> ways = with.waysInto(inner);
      if (ways.isEmpty()) {
        return new Arrangement.None(Arrangement.Why.ONE_BOX, box.name());
      }
      filled += ways.get(0).cubicMetres();
      grown.add(new Box(box.name(), ways));
    }
    if (Exact.above(filled, inner.cubicMetres())) {
      return new Arrangement.None(Arrangement.Why.VOLUME, "");
    }
    return grown.size() > MOST_BOXES ? new Arrangement.Unsettled(0) : searched(inner, grown);
  }

  /** Large boxes first: they leave the least choice. Equal ones stand together. */
  private Arrangement searched(Size inner, List<Box> grown) {
    List<Box> largestFirst = new ArrayList<>(grown);
    largestFirst.sort(
        Comparator.comparingDouble((Box b) -> -b.ways().get(0).cubicMetres())
            .thenComparing(b -> b.ways().toString())
            .thenComparing(Box::name));
    PackingSearch search = new PackingSearch(inner, largestFirst, steps);
    return switch (search.run()) {
      case EXHAUSTED -> new Arrangement.None(Arrangement.Why.ALL_TRIED, "");
      case STOPPED -> new Arrangement.Unsettled(search.taken());
      case FOUND -> {
        Placed[] placed = new Placed[boxes.size()];
        for (int i = 0; i < placed.length; i++) {
          placed[grown.indexOf(largestFirst.get(i))] = ungrown(search.placed(i));
        }
        yield new Arrangement.Found(List.of(placed));
      }
    };
  }

  private Placed ungrown(Placed grown) {
    return new Placed(
        grown.name(),
        grown.lying().grown(-clearance),
        grown.along() + clearance,
        grown.across() + clearance,
        grown.up() + clearance);
  }
}
