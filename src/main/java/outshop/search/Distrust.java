package outshop.search;

import java.util.OptionalInt;

/**
 * What was found for a cell does not hold for one combination of it: a rule answers otherwise, or
 * what was taken for free of violations is not. From then on less is concluded from one to the
 * others, and what rests on it is found anew.
 */
final class Distrust extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String rule;
  private final int piece;

  private Distrust(String rule, int piece) {
    super(rule + " answers otherwise for one combination than for the cell around it");
    this.rule = rule;
    this.piece = piece;
  }

  /** Of a rule's violations and warnings. */
  static Distrust of(String rule) {
    return new Distrust(rule, -1);
  }

  /** Of there being no violation by the rules of a piece. */
  static Distrust ofWorking(int piece) {
    return new Distrust(working(piece), piece);
  }

  /** What stands for "nothing is wrong" by the rules of a piece, among what is not trusted. */
  static String working(int piece) {
    return "(works) " + piece;
  }

  String rule() {
    return rule;
  }

  OptionalInt piece() {
    return piece < 0 ? OptionalInt.empty() : OptionalInt.of(piece);
  }
}
