package outshop.figures;

import java.util.List;

final class CurrentFigures {
  private CurrentFigures() {}

  static List<Object> of(Bench bench) {
    return List.of();
  }
}
