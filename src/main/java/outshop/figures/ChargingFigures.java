package outshop.figures;

import java.util.List;

/**
 * Chargers against the packs they charge: by their data, by the circuit with the plug in and out,
 * and packs against one another.
 */
final class ChargingFigures {
  static final Pieces<Bench> PIECES =
      new Pieces<>(
          bench -> bench,
          List.of(
              PackFigures::of,
              ChargerFigures::alone,
              ChargerFigures::chemistries,
              ChargerFigures::currents,
              ChargerFigures::nickel,
              ChargerFigures::volts,
              ChargerFigures::times,
              PlugFigures::of,
              PlugStateFigures::of,
              JackFigures::of,
              PackPairFigures::of));

  private ChargingFigures() {}

  static List<Object> of(Bench bench) {
    return PIECES.all(bench);
  }
}
