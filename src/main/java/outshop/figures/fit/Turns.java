package outshop.figures.fit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Which ways a box may lie. */
public enum Turns {
  /** As its sizes are written: length along the bay, width across, height up. */
  NONE,
  /** Its height stays upright; it may be turned round on the floor. */
  FLAT,
  /** On any of its faces, each either way round. */
  ANY;

  /** The ways a box of this size may lie, each once, as it is written first. */
  public List<Size> ways(Size size) {
    long l = size.along();
    long w = size.across();
    long h = size.up();
    Set<Size> ways = new LinkedHashSet<>();
    ways.add(size);
    if (this != NONE) {
      ways.add(new Size(w, l, h));
    }
    if (this == ANY) {
      ways.add(new Size(l, h, w));
      ways.add(new Size(h, l, w));
      ways.add(new Size(w, h, l));
      ways.add(new Size(h, w, l));
    }
    return List.copyOf(ways);
  }
}
