package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.Circuit;
import outshop.circuit.Link;
import outshop.circuit.LoadCase;
import outshop.circuit.State;
import outshop.circuit.WireValues;
import outshop.figures.Bench;
import outshop.figures.ContactLoad;
import outshop.figures.Flows;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.AmountText;

/**
 * What flows in each part and conductor that is closed while running, beside what it may carry: for
 * long, and for a moment where its data say so.
 */
final class CurrentLadder {
  private final Bench bench;
  private final List<Object> facts;
  private final Flows flows;

  private CurrentLadder(Bench bench, List<Object> facts) {
    this.bench = bench;
    this.facts = facts;
    this.flows = Flows.of(bench);
  }

  static Plot of(Bench bench, List<Object> facts) {
    return new Plot(
        Plot.Subject.CURRENT_LADDER, "", new CurrentLadder(bench, facts).rows(), List.of());
  }

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (Fitted pack : bench.plan().parts(Kind.PACK)) {
      rows.add(part(pack, pack.name(), "continuous_amps", "peak_amps"));
    }
    rows.addAll(fuses());
    rows.addAll(wires());
    rows.addAll(contacts(Link.Sort.SWITCH));
    rows.addAll(contacts(Link.Sort.CONTACT));
    rows.addAll(contacts(Link.Sort.BREAK_CONTACT));
    for (Fitted receiver : bench.plan().parts(Kind.RECEIVER)) {
      rows.add(part(receiver, receiver.name(), "continuous_amps", "peak_amps"));
    }
    for (Fitted decoder : bench.plan().parts(Kind.DECODER)) {
      rows.add(
          part(decoder, decoder.name() + " motor", "motor_continuous_amps", "motor_peak_amps"));
    }
    for (String motor : bench.plan().names("locomotive.motors")) {
      rows.add(row(motor, motor, motor, new Amount.Absent(motor), new Amount.Absent(motor)));
    }
    rows.removeIf(CurrentLadder::carriesNothing);
    return rows.isEmpty() ? List.of(noPack()) : rows;
  }

  private static Row noPack() {
    Amount wanted = Amount.missing("parts", "pack", "choose a pack");
    return new Row("pack", "pack", List.of(Mark.of(Meaning.CRUISING, wanted)));
  }

  /** What carries nothing while it runs carries nothing at any other load of the motor either. */
  private static boolean carriesNothing(Row row) {
    List<Amount> flows =
        row.marks().stream()
            .filter(m -> m.meaning() != Meaning.CONTINUOUS && m.meaning() != Meaning.PEAK)
            .map(Mark::amount)
            .toList();
    return flows.stream().anyMatch(Flows::isNothing)
        && flows.stream().allMatch(amps -> amps.isMissing() || Flows.isNothing(amps));
  }

  private Row part(Fitted part, String element, String continuous, String peak) {
    return row(element, part.described(), element, part.amount(continuous), part.amount(peak));
  }

  private Row row(String name, String described, String element, Amount continuous, Amount peak) {
    return new Row(
        name,
        described,
        List.of(
            Mark.of(Meaning.CRUISING, flows.amps(LoadCase.Drive.CRUISING, element)),
            Mark.of(Meaning.SLIPPING, flows.amps(LoadCase.Drive.SLIPPING, element)),
            Mark.of(Meaning.BLOCKED, flows.amps(LoadCase.Drive.BLOCKED, element)),
            Mark.of(Meaning.CONTINUOUS, continuous),
            Mark.of(Meaning.PEAK, peak)));
  }

  private List<Link> closed(Link.Sort sort) {
    State running = bench.circuit().running();
    return bench.circuit().links().stream()
        .filter(l -> l.sort() == sort && l.closed().in(running))
        .toList();
  }

  private List<Row> fuses() {
    List<Row> rows = new ArrayList<>();
    for (Link link : closed(Link.Sort.FUSE)) {
      Optional<Fitted> fuse = link.part();
      Amount rated = fuse.map(f -> f.amount("rated_amps")).orElse(new Amount.Absent(link.name()));
      boolean resettable = rated.isAbsent() && fuse.isPresent();
      rows.add(
          row(
              link.name(),
              fuse.map(Fitted::described).orElse(link.name()),
              link.name(),
              resettable ? fuse.get().amount("hold_amps") : rated,
              new Amount.Absent(link.name())));
    }
    return rows;
  }

  private List<Row> wires() {
    List<Alike.Keyed> wires = new ArrayList<>();
    for (Link link : closed(Link.Sort.WIRE)) {
      Amount ampacity =
          link.part()
              .map(WireValues::chassisAmps)
              .orElseGet(
                  () ->
                      Amount.missing(
                          "wiring",
                          "wire",
                          "choose the wire; its gauge is printed on it or on its reel"));
      Amount none = new Amount.Absent(link.name());
      String gauge = gauge(link);
      String name =
          "%s: %s - %s".formatted(gauge, Circuit.owner(link.from()), Circuit.owner(link.to()));
      wires.add(
          new Alike.Keyed(gauge, row(name, "wire " + link.name(), link.name(), ampacity, none)));
    }
    return together(wires);
  }

  private static List<Row> together(List<Alike.Keyed> rows) {
    rows.removeIf(keyed -> carriesNothing(keyed.row()));
    return Alike.together(rows);
  }

  private static String gauge(Link link) {
    if (link.part().isEmpty()) {
      return "wire of no stated gauge";
    }
    Fitted wire = link.part().get();
    Amount awg = wire.amount("awg");
    Amount size = awg.isKnown() ? awg : wire.amount("area_mm2");
    return size instanceof Amount.Known k
        ? "wire " + AmountText.text(k)
        : "wire of no stated gauge";
  }

  private List<Row> contacts(Link.Sort sort) {
    List<Alike.Keyed> contacts = new ArrayList<>();
    for (Link link : closed(sort)) {
      if (link.part().isPresent()) {
        Fitted part = link.part().get();
        Amount none = new Amount.Absent(link.name());
        Row row = row(link.name(), part.described(), link.name(), rating(sort, part), none);
        contacts.add(new Alike.Keyed(part.name(), row));
      }
    }
    return together(contacts);
  }

  private Amount rating(Link.Sort sort, Fitted part) {
    return switch (sort) {
      case SWITCH -> part.amount("dc_amps");
      case BREAK_CONTACT -> part.amount("break_amps");
      default ->
          Plots.all(facts, ContactLoad.class).stream()
              .filter(c -> c.sort() == ContactLoad.Sort.MATED)
              .filter(c -> c.at().name().equals(part.name()))
              .map(ContactLoad::ratingAmps)
              .findFirst()
              .orElseGet(() -> part.amount("contact_amps"));
    };
  }
}
