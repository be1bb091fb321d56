package outshop.sheets;

import java.util.ArrayList;
import java.util.List;
import outshop.sheets.BenchSheet.Off;
import outshop.sheets.BenchSheet.Side;
import outshop.sheets.BenchSheet.Step;

/** Collects the steps of one stage. */
final class Steps {
  private final List<Step> steps = new ArrayList<>();

  /** Adds a step. */
  void add(String name, Line act, Line leads, Expected expected, Off... ifOff) {
    steps.add(new Step(name, act, leads, expected, List.of(ifOff)));
  }

  static Off low(String words, Line.Piece... fill) {
    return new Off(Side.LOW, Line.of(words, fill));
  }

  static Off high(String words, Line.Piece... fill) {
    return new Off(Side.HIGH, Line.of(words, fill));
  }

  static Off none(String words, Line.Piece... fill) {
    return new Off(Side.NONE, Line.of(words, fill));
  }

  static Line.Piece own(String words) {
    return Line.own(words);
  }

  /** Between two terminals. */
  static Line between(String one, String other) {
    return Line.of("{} and {}", own(one), own(other));
  }

  /** With the leads the right way round. */
  static Line red(String plus, String minus) {
    return Line.of("red {}, black {}", own(plus), own(minus));
  }

  List<Step> list() {
    return List.copyOf(steps);
  }
}
