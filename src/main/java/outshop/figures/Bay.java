package outshop.figures;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.circuit.At;
import outshop.circuit.Station;
import outshop.figures.fit.Box;
import outshop.figures.fit.Size;
import outshop.figures.fit.Turns;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.AmountText;
import outshop.units.Origin;
import outshop.units.Said;
import outshop.units.Unit;
import outshop.units.Want;

/**
 * A bay of the locomotive and the parts that the plan puts into it.
 *
 * @param name as the plan names it
 * @param parts those whose kind has sizes; wires, contacts and other small things are left to the
 *     clearance
 */
record Bay(String name, Amount length, Amount width, Amount height, List<Fitted> parts) {
  /** The gap kept round every part where the plan says nothing: common practice, no source. */
  private static final double USUAL_CLEARANCE_METRES = 0.002;

  /** The kinds of part that have three sides. */
  private static final Set<Kind> SIZED =
      EnumSet.of(
          Kind.PACK,
          Kind.CAPACITOR,
          Kind.REGULATOR,
          Kind.RECEIVER,
          Kind.DECODER,
          Kind.SMOKE_HEATER,
          Kind.SPEAKER);

  Bay {
    parts = List.copyOf(parts);
  }

  /** Every bay of a plan, in the plan's order. */
  static List<Bay> of(Plan plan) {
    List<Bay> bays = new ArrayList<>();
    for (String name : plan.names("locomotive.bays")) {
      String at = "locomotive.bays." + name + ".";
      bays.add(
          new Bay(
              name,
              plan.amount(at + "length"),
              plan.amount(at + "width"),
              plan.amount(at + "height"),
              sized(plan).stream().filter(p -> bayOf(plan, p).equals(Optional.of(name))).toList()));
    }
    return bays;
  }

  /** The parts of a plan that have three sides, in the plan's order. */
  static List<Fitted> sized(Plan plan) {
    return plan.parts().stream().filter(p -> SIZED.contains(p.kind())).toList();
  }

  /** The bay that a part is put into, if the plan says. */
  static Optional<String> bayOf(Plan plan, Fitted part) {
    return plan.text("parts." + part.name() + ".bay");
  }

  /** The gap kept round every part. */
  static Amount clearance(Plan plan) {
    return plan.amount("wishes.clearance")
        .orElse(
            Amount.known(
                USUAL_CLEARANCE_METRES,
                Unit.METRES,
                Origin.STANDARD,
                "clearance",
                "not stated; common practice"));
  }

  static long clearanceMicrometres(Plan plan) {
    return Size.micrometres(clearance(plan).get().value());
  }

  At at() {
    return new At(Station.LOCOMOTIVE, name, "bay " + name);
  }

  /** Its inside; empty if a side is not stated. */
  Optional<Size> room() {
    return size(length, width, height);
  }

  List<Want> roomWants() {
    return Standing.wants(length, width, height);
  }

  /** Its inside in words, or what is stated of it. */
  String roomWords() {
    return room().map(Bay::words).orElse("not measured");
  }

  /** The sides of a part; empty if one is not stated. */
  static Optional<Size> size(Fitted part) {
    return size(part.amount("length_mm"), part.amount("width_mm"), part.amount("height_mm"));
  }

  static List<Want> sizeWants(Fitted part) {
    return Standing.wants(
        part.amount("length_mm"), part.amount("width_mm"), part.amount("height_mm"));
  }

  private static Optional<Size> size(Amount length, Amount width, Amount height) {
    boolean known = length.isKnown() && width.isKnown() && height.isKnown();
    return known
        ? Optional.of(
            Size.ofMetres(length.get().value(), width.get().value(), height.get().value()))
        : Optional.empty();
  }

  /** Which ways a part may lie; {@code otherwise} where the plan does not say. */
  static Turns turns(Plan plan, Fitted part, Turns otherwise) {
    return turnsSaid(plan, part) instanceof Said.Word word
        ? Turns.valueOf(word.word().toUpperCase(Locale.ROOT))
        : otherwise;
  }

  static Said turnsSaid(Plan plan, Fitted part) {
    return plan.said("parts." + part.name() + ".turns");
  }

  /** The boxes of those parts whose sides are stated. */
  static List<Box> boxes(Plan plan, List<Fitted> parts, Turns otherwise) {
    List<Box> boxes = new ArrayList<>();
    for (Fitted part : parts) {
      size(part).ifPresent(s -> boxes.add(Box.of(part.name(), s, turns(plan, part, otherwise))));
    }
    return boxes;
  }

  /** Sizes in words, such as {@code 140 x 40 x 38 mm}. */
  static String words(Size size) {
    return millimetres(size.along())
        + " x "
        + millimetres(size.across())
        + " x "
        + millimetres(size.up())
        + " mm";
  }

  /** With as many digits as the size has, so that two that differ never look alike. */
  private static String millimetres(long micrometres) {
    return BigDecimal.valueOf(micrometres, 3).stripTrailingZeros().toPlainString();
  }

  /** Cubic metres in words, in cubic centimetres. */
  static String cubicCentimetres(double cubicMetres) {
    return AmountText.number(cubicMetres * 1e6) + " cm³";
  }
}
