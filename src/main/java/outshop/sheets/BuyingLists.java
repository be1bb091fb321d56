package outshop.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import outshop.catalogue.Kind;
import outshop.circuit.Link;
import outshop.figures.Bench;
import outshop.figures.ConnectorHalves;
import outshop.figures.Presence;
import outshop.findings.Finding;
import outshop.plan.Fitted;
import outshop.plan.Plan;
import outshop.report.Report;
import outshop.units.Amount;
import outshop.units.Unit;

/** Draws up the buying list of a plan. */
public final class BuyingLists {
  /** Cut-offs and second tries: common practice, no source. */
  private static final double WIRE_RESERVE = 1.2;

  /** Sleeve over one joint, in metres: common practice, no source. */
  private static final double SLEEVE_METRES = 0.02;

  private final Bench bench;
  private final Plan plan;
  private final List<BuyingList.Row> parts = new ArrayList<>();
  private final List<BuyingList.Row> materials = new ArrayList<>();
  private final Set<String> unpriced = new LinkedHashSet<>();
  private double total;

  private BuyingLists(Bench bench) {
    this.bench = bench;
    this.plan = bench.plan();
  }

  /**
   * The buying list.
   *
   * @param facts every fact of the plan
   */
  public static BuyingList of(Bench bench, List<Object> facts, Report report) {
    BuyingLists lists = new BuyingLists(bench);
    lists.parts();
    lists.wires();
    lists.sleeves();
    Figure total = new Figure("total", money(lists.total), Unit.MONEY);
    Optional<Figure> budget = known("budget", lists.plan.amount("wishes.budget"));
    return new BuyingList(
        lists.plan.title(),
        lists.plan.file(),
        lists.parts,
        lists.materials,
        lists.missing(facts, report),
        total,
        List.copyOf(lists.unpriced),
        budget,
        budget.map(b -> new Figure("left", money(b.value() - total.value()), Unit.MONEY)));
  }

  private static Optional<Figure> known(String name, Amount amount) {
    return amount instanceof Amount.Known k ? Optional.of(Figure.of(name, k)) : Optional.empty();
  }

  /** Sums of prices in whole hundredths. */
  private static double money(double value) {
    return Math.round(value * 100) / 100.0;
  }

  private void parts() {
    Map<String, List<Fitted>> bySort = new LinkedHashMap<>();
    for (Fitted fitted : plan.parts()) {
      if (!fitted.is(Kind.SLEEVE)) {
        bySort.computeIfAbsent(fitted.part().id(), id -> new ArrayList<>()).add(fitted);
      }
    }
    bySort.forEach(
        (id, all) ->
            row(
                parts,
                Optional.of(Figure.count(id + ".pieces", all.size())),
                all.get(0),
                String.join(", ", all.stream().map(Fitted::name).toList())));
  }

  private void row(
      List<BuyingList.Row> rows, Optional<Figure> quantity, Fitted part, String where) {
    String id = part.part().id();
    Optional<Figure> each = known(id + ".each", part.amount("price_each"));
    Optional<Figure> cost =
        quantity.isPresent() && each.isPresent()
            ? Optional.of(
                new Figure(
                    id + ".cost", money(quantity.get().value() * each.get().value()), Unit.MONEY))
            : Optional.empty();
    cost.ifPresentOrElse(c -> total += c.value(), () -> unpriced.add(part.part().title()));
    rows.add(new BuyingList.Row(quantity, id, part.part().title(), where, each, cost));
  }

  private void wires() {
    Map<String, Amount> metres = WiringSheets.metres(bench);
    for (Link link : WiringSheets.wires(bench)) {
      link.part()
          .filter(w -> metres.containsKey(w.part().id()))
          .ifPresent(
              w -> {
                Amount all = metres.remove(w.part().id());
                row(materials, tenths(w.part().id() + ".metres", all), w, "wires");
              });
    }
  }

  /** With the reserve, up to the next tenth of a metre. */
  private static Optional<Figure> tenths(String name, Amount metres) {
    return metres instanceof Amount.Known k
        ? Optional.of(
            new Figure(name, Math.ceil(k.value() * WIRE_RESERVE * 10 - 1e-9) / 10, Unit.METRES))
        : Optional.empty();
  }

  /** Two joints a wire at the most, of the sleeve that the wiring sheet names. */
  private void sleeves() {
    Map<String, Integer> joints = new LinkedHashMap<>();
    for (WiringSheet.Wire wire : WiringSheets.of(bench).wires()) {
      plan.parts(Kind.SLEEVE).stream()
          .filter(s -> wire.sleeve().text().equals(s.name()))
          .forEach(s -> joints.merge(s.name(), 2, Integer::sum));
    }
    for (Fitted sleeve : plan.parts(Kind.SLEEVE)) {
      double metres = joints.getOrDefault(sleeve.name(), 0) * SLEEVE_METRES;
      Figure quantity =
          new Figure(
              sleeve.part().id() + ".metres", Math.ceil(metres * 10 - 1e-9) / 10, Unit.METRES);
      row(materials, Optional.of(quantity), sleeve, sleeve.name());
    }
  }

  private List<Line> missing(List<Object> facts, Report report) {
    List<Line> missing = new ArrayList<>();
    facts.stream()
        .filter(Presence.class::isInstance)
        .map(Presence.class::cast)
        .filter(p -> !p.isFine())
        .forEach(
            p -> missing.add(Line.of("a " + p.situation() + ": every such locomotive needs one")));
    if (!plan.parts(Kind.PACK).isEmpty() && plan.parts(Kind.FUSE).isEmpty()) {
      missing.add(Line.of("a fuse with its holder, for the pack's plus"));
    }
    facts.stream()
        .filter(ConnectorHalves.class::isInstance)
        .map(ConnectorHalves.class::cast)
        .filter(h -> !h.otherHalf().is("yes"))
        .forEach(h -> missing.add(Line.of("the other half of {}", Line.own(h.at().described()))));
    fuses(missing);
    if (plan.part("wiring.wire").isEmpty() && plan.wires().isEmpty()) {
      missing.add(Line.of("the wire of the power path: the plan names none"));
    }
    if (plan.parts(Kind.SLEEVE).isEmpty()) {
      missing.add(Line.of("shrink sleeve for the joints, in the sizes on the wiring sheet"));
    }
    report.findings().stream()
        .filter(f -> f.rule().equals("lighting/led-without-resistor"))
        .map(Finding::at)
        .forEach(at -> missing.add(Line.of("a resistor for {}", Line.own(at.name()))));
    return missing;
  }

  private void fuses(List<Line> missing) {
    for (Fitted fuse : plan.parts(Kind.FUSE)) {
      if (fuse.said("holder").is("separate")) {
        missing.add(Line.of("a holder for {}: it is sold apart", Line.own(fuse.described())));
      } else if (fuse.said("holder").isUnsaid()) {
        missing.add(
            Line.of(
                "perhaps a holder for {}: the catalogue does not say", Line.own(fuse.described())));
      }
      if (!fuse.said("style").is("resettable")) {
        missing.add(Line.of("two spare fuses like {}", Line.own(fuse.described())));
      }
    }
  }
}
