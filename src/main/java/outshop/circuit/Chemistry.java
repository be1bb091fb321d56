package outshop.circuit;

import java.util.Optional;

/**
 * Volts of one cell, by chemistry.
 *
 * <p>Sources. Lithium-ion: nominal 3.60 V, charged to 4.20 V +/- 50 mV, taken as empty at 3.0 V
 * (common practice, no source; some makers allow 2.5 V). Lithium iron phosphate: 3.2, 3.65, 2.5 V
 * (from memory). Nickel-metal hydride: 1.20 V nominal, 1.45 V on charge (1.4 to 1.5), 1.0 V empty.
 * Nickel-cadmium: 1.20, 1.45 (from memory), 0.9 V. Sealed lead-acid: 2.00 V nominal, 2.40 V at the
 * end of cyclic charging (from memory), 1.75 V empty. Primary cells, from memory: alkaline 1.5,
 * 1.6, 0.9 V; lithium 3.0, 3.3, 2.0 V. docs/verification.md says which of them were read where.
 *
 * @param fullVolts straight off the charger
 * @param emptyVolts under load, where discharging should end
 * @param lowestVolts below which the cell is harmed
 */
public record Chemistry(
    String word,
    double fullVolts,
    double nominalVolts,
    double emptyVolts,
    double lowestVolts,
    boolean rechargeable) {

  public static Optional<Chemistry> of(String word) {
    return Optional.ofNullable(
        switch (word) {
          case "li-ion" -> new Chemistry(word, 4.20, 3.60, 3.0, 2.5, true);
          case "lifepo4" -> new Chemistry(word, 3.65, 3.2, 2.5, 2.0, true);
          case "nimh" -> new Chemistry(word, 1.45, 1.20, 1.0, 0.9, true);
          case "nicd" -> new Chemistry(word, 1.45, 1.20, 0.9, 0.8, true);
          case "lead-acid" -> new Chemistry(word, 2.40, 2.00, 1.75, 1.75, true);
          case "primary-alkaline" -> new Chemistry(word, 1.6, 1.5, 0.9, 0.8, false);
          case "primary-lithium" -> new Chemistry(word, 3.3, 3.0, 2.0, 2.0, false);
          default -> null;
        });
  }

  public boolean lithium() {
    return word.equals("li-ion") || word.equals("lifepo4");
  }
}
