package outshop.figures;

import outshop.circuit.At;
import outshop.units.Amount;
import outshop.units.Unit;

/**
 * A filament lamp and the volts it burns at.
 *
 * @param fullVolts pack full, locomotive standing
 * @param nominalVolts pack at nominal volts, locomotive standing
 * @param ratedVolts missing also where it is not known to be a filament lamp
 */
public record BulbFeed(At at, Amount fullVolts, Amount nominalVolts, Amount ratedVolts) {

  /** Its life with the pack full, at least, as a share of its rated life. */
  public Amount leastLife() {
    return Amount.computed(
        at.name() + ": life, least",
        Unit.SHARE,
        "(volts / rated volts)^" + (int) FilamentLaws.LIFE_HARSH + " of its rated life",
        v -> FilamentLaws.leastLife(v[0] / v[1]),
        fullVolts,
        ratedVolts);
  }

  /** Its life with the pack full, at most, as a share of its rated life. */
  public Amount mostLife() {
    return Amount.computed(
        at.name() + ": life, most",
        Unit.SHARE,
        "(volts / rated volts)^" + (int) FilamentLaws.LIFE_MILD + " of its rated life",
        v -> FilamentLaws.mostLife(v[0] / v[1]),
        fullVolts,
        ratedVolts);
  }

  /** Its life with the pack full, in words that fill a sentence. */
  public String lifeWords() {
    return leastLife() instanceof Amount.Known least && mostLife() instanceof Amount.Known most
        ? ShareWords.between(least.value(), most.value())
        : "an unknown part";
  }

  /** Its light with the pack at nominal volts, in words that fill a sentence. */
  public String lightWords() {
    return light() instanceof Amount.Known known ? ShareWords.of(known.value()) : "an unknown part";
  }

  /** Its light with the pack at nominal volts, as a share of its rated light. */
  public Amount light() {
    return Amount.computed(
        at.name() + ": light",
        Unit.SHARE,
        "(volts / rated volts)^" + FilamentLaws.LIGHT + " of its rated light",
        v -> FilamentLaws.share(v[0] / v[1], FilamentLaws.LIGHT),
        nominalVolts,
        ratedVolts);
  }
}
