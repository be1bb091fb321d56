package outshop.drawing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Finds where on a line its contact is drawn: in the middle of the longest stretch that is no other
 * line's too and that no other line crosses.
 */
final class Gaps {
  private static final int HALF = 10;

  private final List<Piece> others = new ArrayList<>();
  private int best = -1;
  private int piece;
  private int from;
  private int to;

  private Gaps(Collection<List<Point>> lines) {
    lines.forEach(line -> others.addAll(pieces(line)));
  }

  static Route.Gap of(List<Point> line, Collection<List<Point>> others) {
    Gaps gaps = new Gaps(others);
    List<Piece> pieces = pieces(line);
    for (int i = 0; i < pieces.size(); i++) {
      gaps.look(i, pieces.get(i));
    }
    return gaps.gap(pieces.get(gaps.piece));
  }

  static List<Piece> pieces(List<Point> line) {
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < line.size(); i++) {
      pieces.add(new Piece(line.get(i), line.get(i + 1)));
    }
    return pieces;
  }

  /** Cuts a piece wherever another line begins, ends or crosses it, and weighs what is left. */
  private void look(int index, Piece own) {
    TreeSet<Integer> cuts = new TreeSet<>(List.of(own.low(), own.high()));
    for (Piece other : others) {
      if (own.meets(other)) {
        boolean along = own.isInLineWith(other);
        int first = along ? other.low() : own.isLevel() ? other.left() : other.top();
        int second = along ? other.high() : first;
        for (int cut : List.of(first, second)) {
          if (cut > own.low() && cut < own.high()) {
            cuts.add(cut);
          }
        }
      }
    }
    int start = own.low();
    for (int cut : cuts) {
      weigh(index, own, start, cut);
      start = cut;
    }
  }

  private void weigh(int index, Piece own, int low, int high) {
    boolean shared = others.stream().anyMatch(o -> own.shared(o, low, high) > 0);
    int weight = shared ? 0 : high - low;
    if (weight > best) {
      best = weight;
      piece = index;
      from = low;
      to = high;
    }
  }

  private Route.Gap gap(Piece own) {
    int middle = (from + to) / 2;
    int half = Math.max(1, Math.min(HALF, (to - from) / 4));
    if (own.isLevel()) {
      int towards = own.a().x() < own.b().x() ? half : -half;
      int y = own.a().y();
      return new Route.Gap(piece, new Point(middle - towards, y), new Point(middle + towards, y));
    }
    int towards = own.a().y() < own.b().y() ? half : -half;
    int x = own.a().x();
    return new Route.Gap(piece, new Point(x, middle - towards), new Point(x, middle + towards));
  }
}
