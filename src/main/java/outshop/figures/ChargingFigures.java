package outshop.figures;

import java.util.ArrayList;
import java.util.List;

/**
 * Chargers against the packs they charge: by their data, by the circuit with the plug in and out,
 * and packs against one another.
 */
final class ChargingFigures {
  private ChargingFigures() {}

  static List<Object> of(Bench bench) {
    List<Object> facts = new ArrayList<>();
    facts.addAll(PackFigures.of(bench));
    facts.addAll(ChargerFigures.of(bench));
    facts.addAll(PlugFigures.of(bench));
    facts.addAll(PlugStateFigures.of(bench));
    facts.addAll(JackFigures.of(bench));
    facts.addAll(PackPairFigures.of(bench));
    return facts;
  }
}
