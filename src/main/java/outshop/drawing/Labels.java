package outshop.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds room for a text at each route: beside a piece that is its own alone, clear of boxes and of
 * other texts, if possible clear of other wires.
 */
public final class Labels {
  /** The height of a line of text with a little air. */
  public static final int HEIGHT = 11;

  /** The size of its letters. */
  public static final int SIZE = 10;

  private static final int STEP = 4;
  private static final int AIR = 2;
  private static final int CROSSED = 40;
  private static final int NOT_OWN = 120;
  private static final int BESIDE = 25;
  private static final int NEAR = 4;
  private static final int ON_THE_LINE = 12;
  private static final int UPRIGHT = 14;

  private final WiringDrawing drawing;
  private final List<Label> placed = new ArrayList<>();

  private Labels(WiringDrawing drawing) {
    this.drawing = drawing;
  }

  /**
   * One thing to be said at a route.
   *
   * @param texts the same said shorter and shorter; the first that finds room is taken
   * @param extra room for a mark before it, in the drawing's units
   */
  public record Said(Route route, List<String> texts, int extra) {
    public Said {
      texts = List.copyOf(texts);
    }
  }

  /** Places what is to be said at routes between boxes, in its order. */
  public static List<Label> place(WiringDrawing drawing, List<Said> all) {
    Labels labels = new Labels(drawing);
    for (Said said : all) {
      labels.first(said).ifPresent(labels.placed::add);
    }
    return labels.placed;
  }

  private Optional<Label> first(Said said) {
    Optional<Label> label = Optional.empty();
    for (int i = 0; label.isEmpty() && i < said.texts().size(); i++) {
      String text = said.texts().get(i);
      int width = Lettering.width(text, SIZE, false) + 2 * AIR + said.extra();
      label = best(said, text, width);
    }
    return label;
  }

  private Optional<Label> best(Said said, String text, int width) {
    Route route = said.route();
    Label best = null;
    int least = Integer.MAX_VALUE;
    for (int i = 0; i + 1 < route.points().size(); i++) {
      Piece piece = new Piece(route.points().get(i), route.points().get(i + 1));
      for (Label label : around(said, piece, text, width)) {
        int cost = cost(label, piece);
        if (cost < least) {
          least = cost;
          best = label;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static List<Label> around(Said said, Piece piece, String text, int width) {
    List<Label> labels = new ArrayList<>();
    if (piece.isLevel()) {
      int y = piece.a().y();
      for (int x = piece.left() - width / 2; x <= piece.right() - width / 2; x += STEP) {
        labels.add(new Label(said, text, x, y - HEIGHT - 2, width, HEIGHT));
        labels.add(new Label(said, text, x, y - HEIGHT / 2, width, HEIGHT));
        labels.add(new Label(said, text, x, y + 2, width, HEIGHT));
      }
    } else {
      int x = piece.a().x();
      for (int y = piece.top(); y + HEIGHT <= piece.bottom(); y += STEP) {
        labels.add(new Label(said, text, x + 3, y, width, HEIGHT));
        labels.add(new Label(said, text, x - 3 - width, y, width, HEIGHT));
        labels.add(new Label(said, text, x - width / 2, y, width, HEIGHT));
      }
    }
    return labels;
  }

  private int cost(Label label, Piece piece) {
    if (label.x() < 0
        || label.y() < 0
        || label.x() + label.width() > drawing.width()
        || placed.stream().anyMatch(label::overlaps)
        || drawing.boxes().stream().anyMatch(b -> touches(label, b))) {
      return Integer.MAX_VALUE;
    }
    return inclination(label, piece) + wires(label, piece);
  }

  /** Boxes have room for marks above them, which stays free too. */
  private static boolean touches(Label label, Box box) {
    return label.overlaps(box.x() - 1, box.y() - Box.ROOM_ABOVE, box.right() + 1, box.bottom() + 1);
  }

  private static int inclination(Label label, Piece piece) {
    int left = label.x();
    int right = label.x() + label.width();
    int over =
        piece.isLevel() ? Math.max(0, piece.left() - left) + Math.max(0, right - piece.right()) : 0;
    boolean onLine =
        piece.isLevel()
            ? label.y() < piece.a().y() && label.y() + HEIGHT > piece.a().y()
            : left < piece.a().x() && right > piece.a().x();
    boolean below = piece.isLevel() && label.y() > piece.a().y();
    int middle =
        piece.isLevel()
            ? Math.abs((left + right) / 2 - (piece.left() + piece.right()) / 2) / 8
            : Math.abs(label.y() + HEIGHT / 2 - (piece.top() + piece.bottom()) / 2) / 8;
    return over * 2
        + (onLine ? ON_THE_LINE : 0)
        + (below ? ON_THE_LINE / 2 : 0)
        + (piece.isLevel() ? 0 : UPRIGHT)
        + middle;
  }

  private int wires(Label label, Piece piece) {
    int cost = 0;
    int from = piece.isLevel() ? label.x() : label.y();
    int to = piece.isLevel() ? label.x() + label.width() : label.y() + label.height();
    for (Route other : drawing.routes()) {
      for (int i = 0; i + 1 < other.points().size() && !other.inside(); i++) {
        Piece its = new Piece(other.points().get(i), other.points().get(i + 1));
        boolean same = other.equals(label.route());
        if (!same && piece.shared(its, from, to) > 0) {
          cost += NOT_OWN;
        } else if (!(same && its.equals(piece))
            && label.overlaps(its.left(), its.top(), its.right() + 1, its.bottom() + 1)) {
          cost += CROSSED;
        } else if (!same
            && label.overlaps(
                its.left() - NEAR, its.top() - NEAR, its.right() + NEAR, its.bottom() + NEAR)) {
          cost += BESIDE;
        }
      }
    }
    return cost;
  }
}
