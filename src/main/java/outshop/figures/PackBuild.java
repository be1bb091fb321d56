package outshop.figures;

import java.util.Optional;
import outshop.circuit.At;
import outshop.circuit.Chemistry;
import outshop.circuit.Places;
import outshop.plan.Fitted;
import outshop.units.Said;

/**
 * How a pack is built.
 *
 * @param mayBeLithium whether its cells are of a lithium kind that is recharged, or not stated
 * @param protection whether a protection circuit is built in; unsaid with the chemistry's want
 *     where that decides
 * @param keyed whether it can be plugged in only one way round
 */
public record PackBuild(At at, boolean mayBeLithium, Said protection, Said keyed) {

  static PackBuild of(Bench bench, Fitted pack) {
    Said chemistry = pack.said("chemistry");
    Said protection = pack.said("protection");
    boolean lithium =
        chemistry instanceof Said.Word word && Chemistry.of(word.word()).orElseThrow().lithium();
    return new PackBuild(
        Places.of(pack),
        lithium || chemistry.isUnsaid(),
        chemistry.isUnsaid() && protection.is("no") ? chemistry : protection,
        keyed(bench, pack));
  }

  /** Of the connector that the plan puts on the pack, else of the pack's own. */
  private static Said keyed(Bench bench, Fitted pack) {
    Optional<Fitted> connector =
        bench.plan().text("wiring.pack_through").flatMap(bench.plan()::part);
    Said own = pack.said("keyed_connector");
    return connector
        .filter(c -> c.isOpen("keyed") || !c.said("keyed").isUnsaid())
        .map(c -> c.said("keyed"))
        .orElse(own);
  }
}
