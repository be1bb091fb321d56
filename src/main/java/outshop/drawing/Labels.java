package outshop.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
  private static final int FAR = 6;
  private static final int FARTHEST = 240;
  private static final int BESIDE = 25;
  private static final int ON_A_JOINT = 60;
  private static final int CONTACT = 1;
  private static final int NEAR = 4;
  private static final int ON_THE_LINE = 12;
  private static final int UPRIGHT = 14;

  private final WiringDrawing drawing;
  private final List<Label> placed = new ArrayList<>();
  private final Map<String, List<Piece>> byRoute = new HashMap<>();
  private final List<Piece> pieces = new ArrayList<>();

  private Labels(WiringDrawing drawing) {
    this.drawing = drawing;
    for (Route route : drawing.routes()) {
      if (!route.inside()) {
        List<Piece> own = Gaps.pieces(route.points());
        byRoute.put(route.link().name(), own);
        pieces.addAll(own);
      }
    }
  }

  /**
   * One thing to be said at a route.
   *
   * @param texts the same said shorter and shorter; the first that finds room is taken
   * @param far what is said where there is room only away from the line
   * @param extra room for a mark before it, in the drawing's units
   */
  public record Said(Route route, List<String> texts, String far, int extra) {
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
      label = best(said, said.texts().get(i), 0);
    }
    // What finds no room beside its line stands as near to it as there is room, with its number.
    for (int off = FAR; label.isEmpty() && off <= FARTHEST; off += FAR) {
      label = best(said, said.far(), off);
    }
    return label;
  }

  private Optional<Label> best(Said said, String text, int off) {
    int width = Lettering.width(text, SIZE, false) + 2 * AIR + said.extra();
    List<Piece> own = byRoute.get(said.route().link().name());
    Label best = null;
    int least = Integer.MAX_VALUE;
    for (Piece piece : own) {
      for (Label label : around(said, piece, text, width, off)) {
        int cost = inclination(label, piece);
        if (cost < least && isFree(label)) {
          cost += wires(label, piece, own, least - cost);
          if (cost < least) {
            least = cost;
            best = label;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static List<Label> around(Said said, Piece piece, String text, int width, int off) {
    List<Label> labels = new ArrayList<>();
    if (piece.isLevel()) {
      int y = piece.a().y();
      for (int x = piece.left() - width / 2; x <= piece.right() - width / 2; x += STEP) {
        labels.add(new Label(said, text, x, y - HEIGHT - 2 - off, width, HEIGHT));
        labels.add(new Label(said, text, x, y - HEIGHT / 2, width, HEIGHT));
        labels.add(new Label(said, text, x, y + 2 + off, width, HEIGHT));
      }
    } else {
      int x = piece.a().x();
      for (int y = piece.top(); y + HEIGHT <= piece.bottom(); y += STEP) {
        labels.add(new Label(said, text, x + 3 + off, y, width, HEIGHT));
        labels.add(new Label(said, text, x - 3 - width - off, y, width, HEIGHT));
        labels.add(new Label(said, text, x - width / 2, y, width, HEIGHT));
      }
    }
    return labels;
  }

  private boolean isFree(Label label) {
    return label.x() >= 0
        && label.y() >= 0
        && label.x() + label.width() <= drawing.width()
        && placed.stream().noneMatch(label::overlaps)
        && drawing.routes().stream().noneMatch(r -> coversContact(label, r))
        && drawing.boxes().stream().noneMatch(b -> touches(label, b));
  }

  private static boolean coversContact(Label label, Route route) {
    return !route.inside()
        && route.gap().isPresent()
        && isNear(label, new Piece(route.gap().get().first(), route.gap().get().second()), CONTACT);
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

  /** What the wires near it cost; not counted on once it is too much. */
  private int wires(Label label, Piece piece, List<Piece> own, int enough) {
    int cost = 0;
    for (Point joint : drawing.joints()) {
      cost += isNear(label, new Piece(joint, joint), NEAR) ? ON_A_JOINT : 0;
    }
    int from = piece.isLevel() ? label.x() : label.y();
    int to = piece.isLevel() ? label.x() + label.width() : label.y() + label.height();
    for (Piece other : pieces) {
      if (cost >= enough) {
        return cost;
      }
      if (!isNear(label, other, NEAR) || other == piece) {
        continue;
      }
      boolean foreign = own.stream().noneMatch(o -> o == other);
      if (foreign && piece.shared(other, from, to) > 0) {
        cost += NOT_OWN;
      } else if (isNear(label, other, 0)) {
        cost += CROSSED;
      } else if (foreign) {
        cost += BESIDE;
      }
    }
    return cost;
  }

  private static boolean isNear(Label label, Piece piece, int within) {
    return label.overlaps(
        piece.left() - within,
        piece.top() - within,
        piece.right() + within + 1,
        piece.bottom() + within + 1);
  }
}
