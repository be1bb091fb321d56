package outshop.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The facts of a family in pieces that read different things, for those who want one piece without
 * the others.
 *
 * @param common what the pieces of one plan share
 * @param pieces each gives its facts
 */
record Pieces<C>(Function<Bench, C> common, List<Function<C, List<?>>> pieces) {
  Pieces {
    pieces = List.copyOf(pieces);
  }

  /** All facts, in the order of the pieces. */
  List<Object> all(Bench bench) {
    C shared = common.apply(bench);
    List<Object> facts = new ArrayList<>();
    pieces.forEach(piece -> facts.addAll(piece.apply(shared)));
    return facts;
  }

  /** Each piece by itself. */
  List<Function<Bench, List<?>>> each() {
    List<Function<Bench, List<?>>> each = new ArrayList<>();
    for (Function<C, List<?>> piece : pieces) {
      each.add(bench -> piece.apply(common.apply(bench)));
    }
    return each;
  }
}
