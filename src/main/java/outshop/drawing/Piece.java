package outshop.drawing;

/** A level or upright piece of a line. */
record Piece(Point a, Point b) {
  boolean isLevel() {
    return a.y() == b.y();
  }

  int left() {
    return Math.min(a.x(), b.x());
  }

  int right() {
    return Math.max(a.x(), b.x());
  }

  int top() {
    return Math.min(a.y(), b.y());
  }

  int bottom() {
    return Math.max(a.y(), b.y());
  }

  /** Where it begins along its own direction. */
  int low() {
    return isLevel() ? left() : top();
  }

  /** Where it ends along its own direction. */
  int high() {
    return isLevel() ? right() : bottom();
  }

  /** Whether another piece lies on the same line as this one, if both were drawn on for ever. */
  boolean isInLineWith(Piece other) {
    return isLevel() == other.isLevel()
        && (isLevel() ? a.y() == other.a.y() : a.x() == other.a.x());
  }

  /** How much of a stretch along this piece lies on another one too. */
  int shared(Piece other, int from, int to) {
    return isInLineWith(other)
        ? Math.max(0, Math.min(to, other.high()) - Math.max(from, other.low()))
        : 0;
  }

  /** Whether the two cross or touch in a place. */
  boolean meets(Piece other) {
    return left() <= other.right()
        && other.left() <= right()
        && top() <= other.bottom()
        && other.top() <= bottom();
  }
}
