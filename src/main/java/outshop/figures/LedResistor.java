package outshop.figures;

import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Unit;

/**
 * The resistor that a LED of its own needs: R = (V - V_f) / I, the next value up of the E24 series,
 * and what it must stand.
 *
 * <p>Source: T. R. Kuphaldt, Lessons in Electric Circuits, volume III (Semiconductors), chapter 3,
 * section on light-emitting diodes; IEC 60063:2015.
 *
 * @param exactOhms for the rated current exactly; what is built in comes off
 * @param ohms the next value up; 0 where what is built in is enough
 * @param watts its heat
 * @param ratingWatts a usual rating that leaves half in reserve
 * @param onTop whether a resistor is built in as well
 */
record LedResistor(Amount exactOhms, Amount ohms, Amount watts, Amount ratingWatts, boolean onTop) {

  /**
   * For one LED.
   *
   * @param led its name
   * @param volts of what feeds it, at most
   * @param forwardVolts of the LED, or of all in series
   * @param builtInOhms of a resistor inside the LED; 0 where there is none
   */
  static LedResistor of(
      String led, Amount volts, Amount forwardVolts, Amount ratedAmps, Amount builtInOhms) {
    Amount exact =
        Amount.computed(
            led + ": resistor",
            Unit.OHMS,
            "(volts - forward volts) / rated current - what is built in",
            v -> Math.max(0, (v[0] - v[1]) / v[2] - v[3]),
            volts,
            forwardVolts,
            ratedAmps,
            builtInOhms);
    Amount ohms =
        Amount.computed(
            led + ": resistor, next value up",
            Unit.OHMS,
            "series E24",
            v -> v[0] > 0 ? ResistorRow.nextUp(v[0]) : 0,
            exact);
    Amount amps =
        Amount.computed(
            led + ": current through that resistor",
            Unit.AMPS,
            "(volts - forward volts) / resistance",
            v -> v[2] > 0 ? Math.max(0, v[0] - v[1]) / (v[2] + v[3]) : 0,
            volts,
            forwardVolts,
            ohms,
            builtInOhms);
    Amount watts = heat(led + ": that resistor", amps, ohms);
    return new LedResistor(
        exact,
        ohms,
        watts,
        rating(led, watts),
        builtInOhms instanceof Amount.Known own && own.value() > 0);
  }

  /** A usual rating for so much heat, half in reserve. */
  static Amount rating(String name, Amount watts) {
    return Amount.computed(
        name + ": rating",
        Unit.WATTS,
        "next usual rating above twice the heat",
        v -> ResistorRow.rating(v[0]),
        watts);
  }

  /** Heat of a resistor from its current. */
  static Amount heat(String name, Amount amps, Amount ohms) {
    return Amount.computed(
        name + ": heat", Unit.WATTS, "current^2 x resistance", v -> v[0] * v[0] * v[1], amps, ohms);
  }

  /** In words that fill a sentence, such as {@code a resistor of 820 ohm, 0.5 W,}. */
  String words() {
    if (ohms instanceof Amount.Known r && ratingWatts instanceof Amount.Known w && r.value() > 0) {
      String words = "a resistor of " + AmountText.text(r) + ", " + AmountText.text(w) + ",";
      return onTop ? words + " on top of the one built in," : words;
    }
    return "a resistor for its rated current";
  }
}
