package outshop.figures;

import java.util.List;

final class ProtectionFigures {
  private ProtectionFigures() {}

  static List<Object> of(Bench bench) {
    return List.of();
  }
}
