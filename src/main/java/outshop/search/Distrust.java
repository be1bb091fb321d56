package outshop.search;

/**
 * A rule did not answer for a combination as it had answered for the cell around it. From then on
 * it is asked of single combinations alone, and what was found so far is found anew.
 */
final class Distrust extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String rule;

  Distrust(String rule) {
    super(rule + " answers otherwise for one combination than for the cell around it");
    this.rule = rule;
  }

  String rule() {
    return rule;
  }
}
