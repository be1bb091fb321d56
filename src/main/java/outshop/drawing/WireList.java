package outshop.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import outshop.circuit.Circuit;
import outshop.circuit.Link;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Origin;

/**
 * The wires of a plan, one a row, in the order of its circuit; the same numbers stand in the
 * drawing.
 */
public record WireList(List<Row> rows) {
  private static final String NOT_STATED = "not stated";

  public WireList {
    rows = List.copyOf(rows);
  }

  /**
   * One wire.
   *
   * @param number from 1
   * @param link the name of its link in the circuit, where findings hang
   * @param from a terminal, {@code owner.terminal}
   * @param to a terminal
   * @param gauge such as {@code 20 AWG} or {@code 0.5 mm²}; empty where nobody stated it
   * @param lengthMm in millimetres; empty where nobody stated it
   * @param colour the colour that its lead ought to have
   * @param chosenColour the colour of the wire chosen, where its lead ought to have one and it is
   *     stated
   * @param remarks what is worth knowing before it is cut, in words
   */
  public record Row(
      int number,
      String link,
      String from,
      String to,
      Optional<String> gauge,
      OptionalDouble lengthMm,
      LeadColour colour,
      Optional<String> chosenColour,
      List<String> remarks) {
    public Row {
      remarks = List.copyOf(remarks);
    }

    /** The colour, or {@code any} where none is asked for. */
    public String colourWords() {
      return colour == LeadColour.UNNAMED ? "any" : colour.word();
    }

    /** The gauge, or {@code not stated}. */
    public String gaugeWords() {
      return gauge.orElse(NOT_STATED);
    }

    /** The length with its unit, or {@code not stated}. */
    public String lengthWords() {
      return lengthMm.isPresent() ? decimals(lengthMm.getAsDouble(), 1) + " mm" : NOT_STATED;
    }
  }

  /** The wires of a circuit. */
  public static WireList of(Circuit circuit) {
    LeadColours colours = LeadColours.of(circuit);
    List<Row> rows = new ArrayList<>();
    for (Link link : circuit.links()) {
      if (link.sort() == Link.Sort.WIRE) {
        rows.add(row(rows.size() + 1, link, colours));
      }
    }
    return new WireList(rows);
  }

  /** The row of each wire, by the name of its link. */
  public Map<String, Row> byLink() {
    Map<String, Row> byLink = new HashMap<>();
    rows.forEach(row -> byLink.put(row.link(), row));
    return byLink;
  }

  private static Row row(int number, Link link, LeadColours colours) {
    LeadColour colour = colours.at(link.from());
    OptionalDouble length = lengthMm(link);
    List<String> remarks = new ArrayList<>();
    if (isShort(link.length())) {
      remarks.add("short lead or joint");
    }
    if (isHalf(link.length())) {
      remarks.add("a part of the length the plan states for the whole lead");
    }
    if (colours.meetsBothPoles(link.from())) {
      remarks.add("joined to the pack's plus and minus alike: no colour is right");
    }
    Optional<String> chosen = chosenColour(link, colour);
    chosen
        .filter(c -> !c.equals(colour.word()))
        .ifPresent(
            c -> remarks.add("the wire chosen is " + c + ": mark both ends " + colour.word()));
    for (String end : List.of(link.from(), link.to())) {
      if (end.startsWith("splice.")) {
        remarks.add("spliced at " + end);
      }
    }
    return new Row(
        number, link.name(), link.from(), link.to(), gauge(link), length, colour, chosen, remarks);
  }

  private static Optional<String> gauge(Link link) {
    if (link.part().isEmpty()) {
      return Optional.empty();
    }
    Fitted wire = link.part().get();
    if (wire.amount("awg") instanceof Amount.Known awg && !awg.isAssumed()) {
      return Optional.of(decimals(awg.value(), 1) + " AWG");
    }
    return wire.amount("area_mm2") instanceof Amount.Known area && !area.isAssumed()
        ? Optional.of(decimals(area.value(), 3) + " mm²")
        : Optional.empty();
  }

  /** A usual or fixed length is none that anybody stated. */
  private static OptionalDouble lengthMm(Link link) {
    boolean stated =
        link.length() instanceof Amount.Known known
            && !known.isAssumed()
            && known.origin() != Origin.STANDARD;
    return stated
        ? OptionalDouble.of(((Amount.Known) link.length()).value() * 1000)
        : OptionalDouble.empty();
  }

  private static boolean isShort(Amount length) {
    return length instanceof Amount.Known known && known.origin() == Origin.STANDARD;
  }

  private static boolean isHalf(Amount length) {
    return length instanceof Amount.Known known && !known.isAssumed() && !known.from().isEmpty();
  }

  private static Optional<String> chosenColour(Link link, LeadColour colour) {
    if (colour == LeadColour.UNNAMED || link.part().isEmpty()) {
      return Optional.empty();
    }
    String chosen = link.part().get().said("colour").or("").strip().toLowerCase(Locale.ROOT);
    return chosen.isEmpty() ? Optional.empty() : Optional.of(chosen);
  }

  /** A number with at most so many decimals and none that say nothing. */
  private static String decimals(double value, int most) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(most, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
