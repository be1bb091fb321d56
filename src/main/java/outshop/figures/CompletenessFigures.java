package outshop.figures;

import java.util.List;

final class CompletenessFigures {
  private CompletenessFigures() {}

  static List<Object> of(Bench bench) {
    return List.of();
  }
}
