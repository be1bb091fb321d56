package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import outshop.catalogue.Kind;
import outshop.circuit.LoadCase;
import outshop.figures.Bench;
import outshop.figures.Flows;
import outshop.figures.FuseDuty;
import outshop.figures.FuseFault;
import outshop.figures.FuseGate;
import outshop.figures.FuseSurge;
import outshop.plan.Fitted;
import outshop.units.Amount;
import outshop.units.Said;

/** The gates of each fuse's standard, with the plan's currents and short circuits. */
final class FuseCurves {
  private final List<Object> facts;
  private final Flows flows;

  private FuseCurves(Bench bench, List<Object> facts) {
    this.facts = facts;
    this.flows = Flows.of(bench);
  }

  static List<Plot> of(Bench bench, List<Object> facts) {
    FuseCurves curves = new FuseCurves(bench, facts);
    List<Fitted> fuses = bench.plan().parts(Kind.FUSE);
    if (fuses.isEmpty()) {
      Amount wanted = Amount.missing("parts", "fuse", "choose a fuse close to the pack");
      Row none = new Row("fuse", "fuse", List.of(Mark.of(Meaning.RATED, wanted)));
      return List.of(new Plot(Plot.Subject.FUSE_GATES, "", List.of(none), List.of()));
    }
    return fuses.stream().map(curves::plot).toList();
  }

  private Plot plot(Fitted fuse) {
    List<Row> rows = new ArrayList<>();
    boolean resettable =
        fuse.amount("rated_amps").isAbsent() || fuse.said("style").is("resettable");
    List<String> remarks = new ArrayList<>();
    if (resettable) {
      remarks.add(
          "A resettable fuse has no gates: its data sheet tells what it holds and when it trips.");
      rows.add(
          new Row(
              "holds",
              "holds for ever",
              List.of(Mark.of(Meaning.RATED, fuse.amount("hold_amps")))));
    } else {
      rows.add(
          new Row("rating", "rating", List.of(Mark.of(Meaning.RATED, fuse.amount("rated_amps")))));
      gates(fuse).ifPresent(rows::add);
      if (fuse.said("gate").is("none")) {
        remarks.add("No standard is named for it that says how soon it opens.");
      }
    }
    currents(fuse, rows);
    shorts(fuse, rows);
    return new Plot(Plot.Subject.FUSE_GATES, fuse.name(), rows, remarks);
  }

  private static Optional<Row> gates(Fitted fuse) {
    List<Mark> marks = new ArrayList<>();
    if (fuse.said("gate") instanceof Said.Unsaid unsaid) {
      marks.add(Mark.of(Meaning.SHORTEST, new Amount.Missing(List.of(unsaid.want()))));
    }
    for (FuseGate gate : FuseGate.of(fuse)) {
      marks.add(Mark.along(Meaning.SHORTEST, gate.amps(), gate.shortestSeconds()));
      marks.add(Mark.along(Meaning.LONGEST, gate.amps(), gate.longestSeconds()));
    }
    String standard = fuse.said("gate").or("its standard");
    return marks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Row("gates", "gates of " + standard, marks));
  }

  private void currents(Fitted fuse, List<Row> rows) {
    for (LoadCase.Drive drive : LoadCase.Drive.values()) {
      Amount amps = flows.amps(drive, fuse.name());
      if (drive != LoadCase.Drive.STANDING && !Flows.isNothing(amps)) {
        Meaning meaning = Meaning.valueOf(drive.name());
        rows.add(new Row(drive.words(), drive.words(), List.of(Mark.of(meaning, amps))));
      }
    }
    for (FuseDuty duty : own(FuseDuty.class, FuseDuty::at, fuse)) {
      if (duty.doing().equals("charging")) {
        rows.add(new Row("charging", "charging", List.of(Mark.of(Meaning.CHARGING, duty.amps()))));
      }
    }
    for (FuseSurge surge : own(FuseSurge.class, FuseSurge::at, fuse)) {
      rows.add(
          new Row(
              "overload " + surge.doing(),
              "overload " + surge.doing(),
              List.of(Mark.along(Meaning.OVERLOAD, surge.amps(), surge.lastsSeconds()))));
    }
  }

  private void shorts(Fitted fuse, List<Row> rows) {
    for (FuseFault fault : own(FuseFault.class, FuseFault::at, fuse)) {
      if (!fault.leastAmps().isAbsent()) {
        String least = "short at " + fault.end() + ", pack nearly empty";
        rows.add(new Row(least, least, List.of(Mark.of(Meaning.SHORT_LEAST, fault.leastAmps()))));
      }
      String most = "short at the pack, pack full";
      rows.add(new Row(most, most, List.of(Mark.of(Meaning.SHORT_MOST, fault.mostAmps()))));
      String breaking = "most it can interrupt";
      rows.add(
          new Row(breaking, breaking, List.of(Mark.of(Meaning.BREAKING, fault.breakingAmps()))));
    }
  }

  private <T> List<T> own(
      Class<T> kind, java.util.function.Function<T, outshop.circuit.At> at, Fitted fuse) {
    return Plots.all(facts, kind).stream()
        .filter(f -> at.apply(f).name().equals(fuse.name()))
        .toList();
  }
}
