package outshop.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Link;
import outshop.drawing.WireList;
import outshop.figures.Bench;
import outshop.figures.Joint;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.units.Amount;
import outshop.units.Exact;

/** Draws up the wiring sheet of a plan from its circuit. */
public final class WiringSheets {
  private final Plan plan;

  private WiringSheets(Plan plan) {
    this.plan = plan;
  }

  /** The wires of a plan. */
  public static WiringSheet of(Bench bench) {
    WiringSheets sheets = new WiringSheets(bench.plan());
    List<WiringSheet.Wire> wires = new ArrayList<>();
    List<WireList.Row> rows = WireList.of(bench.circuit()).rows();
    List<Link> links = wires(bench);
    for (int i = 0; i < rows.size(); i++) {
      wires.add(sheets.wire(rows.get(i), links.get(i)));
    }
    return new WiringSheet(
        bench.plan().title(),
        bench.plan().file(),
        bench.plan().said("wiring.pattern").or("not stated"),
        wires,
        notes(bench));
  }

  /** Every wire of the circuit. */
  static List<Link> wires(Bench bench) {
    return bench.circuit().links().stream().filter(l -> l.sort() == Link.Sort.WIRE).toList();
  }

  private WiringSheet.Wire wire(WireList.Row row, Link link) {
    String name = "wire-" + row.number();
    return new WiringSheet.Wire(
        Figure.count(name, row.number()),
        row.from(),
        row.to(),
        link.part().flatMap(wire -> size(name, wire)),
        row.lengthMm().isPresent() ? known(name + ".length", link.length()) : Optional.empty(),
        colour(row),
        link.part().map(wire -> sleeve(name, wire)).orElse(Line.of("choose the wire first")));
  }

  private static Optional<Figure> size(String name, Fitted wire) {
    return known(name + ".gauge", wire.amount("awg"))
        .or(() -> known(name + ".area", wire.amount("area_mm2")));
  }

  private static Optional<Figure> known(String name, Amount amount) {
    return amount instanceof Amount.Known k ? Optional.of(Figure.of(name, k)) : Optional.empty();
  }

  private static String colour(WireList.Row row) {
    String chosen =
        row.chosenColour()
            .filter(c -> !c.equals(row.colour().word()))
            .map(c -> " (chosen: " + c + ", mark both ends)")
            .orElse("");
    return row.colourWords() + chosen;
  }

  /** A sleeve of the plan that passes over the joint and shrinks onto the wire; else its size. */
  private Line sleeve(String name, Fitted wire) {
    Joint joint = Joint.of(wire);
    if (!(joint.across() instanceof Amount.Known across)
        || !(joint.insulation() instanceof Amount.Known insulation)) {
      return Line.of("not known: the wire's outer diameter");
    }
    Optional<Fitted> fits =
        plan.parts(Kind.SLEEVE).stream()
            .filter(s -> fits(s, across.value(), insulation.value()))
            .findFirst();
    if (fits.isPresent()) {
      return Line.of("{}", Line.own(fits.get().name()));
    }
    return Line.of(
        "over {} / under {}",
        Line.number(Figure.of(name + ".sleeve-over", across)),
        Line.number(Figure.of(name + ".sleeve-below", insulation)));
  }

  private static boolean fits(Fitted sleeve, double across, double insulation) {
    return sleeve.amount("supplied_bore_mm") instanceof Amount.Known supplied
        && sleeve.amount("recovered_bore_mm") instanceof Amount.Known recovered
        && !Exact.below(supplied.value(), across)
        && !Exact.above(recovered.value(), insulation);
  }

  /** Metres of each sort of wire, by the part. */
  static Map<String, Amount> metres(Bench bench) {
    Map<String, List<Amount>> lengths = new LinkedHashMap<>();
    for (Link link : wires(bench)) {
      link.part()
          .ifPresent(
              w ->
                  lengths
                      .computeIfAbsent(w.part().id(), id -> new ArrayList<>())
                      .add(link.length()));
    }
    Map<String, Amount> metres = new LinkedHashMap<>();
    lengths.forEach(
        (id, each) -> metres.put(id, Amount.sum(id + ": length", outshop.units.Unit.METRES, each)));
    return metres;
  }

  private static List<Line> notes(Bench bench) {
    List<Line> notes = new ArrayList<>();
    notes.add(
        Line.of(
            "Wire with the pack and the charger out. Put the sleeve on the wire before you solder;"
                + " leads that never need to part are soldered and sleeved."));
    notes.add(
        Line.of(
            "Sleeve: one of the plan's, or its size: wider than the first figure as sold, narrower than"
                + " the second when shrunk."));
    notes.add(
        Line.of(
            "Colours of decoder, motor and lamp leads as the published DCC wiring practice names them,"
                + " red and black for the pack by common practice; where the wire chosen has another,"
                + " mark both ends."));
    bench
        .first(Kind.FUSE)
        .ifPresent(
            fuse ->
                notes.add(
                    Line.of(
                        "{} sits as near the pack as it can; nothing is joined to the pack's plus"
                            + " before it.",
                        Line.own(fuse.name()))));
    if (bench.plan().names("outputs").isEmpty()) {
      return notes;
    }
    notes.add(
        Line.of(
            "A lamp's lead on the decoder's common never touches frame or rails; nor does a speaker"
                + " lead."));
    return notes;
  }
}
