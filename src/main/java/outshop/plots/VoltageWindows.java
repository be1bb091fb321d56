package outshop.plots;

import java.util.ArrayList;
import java.util.List;
import outshop.catalogue.Kind;
import outshop.circuit.LoadCase;
import outshop.circuit.PackValues;
import outshop.figures.Bench;
import outshop.figures.BulbFeed;
import outshop.figures.FedVolts;
import outshop.figures.Feed;
import outshop.figures.HoldUpFeed;
import outshop.figures.MotorFeed;
import outshop.figures.RegulatorFeed;
import outshop.plan.Fitted;
import outshop.units.Amount;

/** What each part takes, in volts, beside what it gets from a full pack to an empty one. */
final class VoltageWindows {
  private final List<Object> facts;
  private final FedVolts fed;
  private final List<Row> rows = new ArrayList<>();

  private VoltageWindows(Bench bench, List<Object> facts) {
    this.facts = facts;
    this.fed = FedVolts.of(bench);
  }

  static Plot of(Bench bench, List<Object> facts) {
    VoltageWindows windows = new VoltageWindows(bench, facts);
    bench.plan().parts(Kind.PACK).forEach(windows::pack);
    windows.regulators();
    windows.fedParts();
    windows.others();
    if (windows.rows.isEmpty()) {
      windows.rows.add(
          new Row(
              "pack",
              "pack",
              List.of(Mark.of(Meaning.NO_LOAD, Amount.missing("parts", "pack", "choose a pack")))));
    }
    return new Plot(Plot.Subject.VOLTAGE_WINDOWS, "", windows.rows, List.of());
  }

  private void pack(Fitted pack) {
    PackValues values = PackValues.of(pack);
    List<Mark> marks = new ArrayList<>();
    for (LoadCase.Charge charge : LoadCase.Charge.values()) {
      marks.add(Mark.at(Meaning.NO_LOAD, charge, values.volts(charge)));
      loaded(marks, pack, charge, "plus", "minus");
    }
    rows.add(new Row(pack.name(), pack.described(), marks));
  }

  private void regulators() {
    for (RegulatorFeed feed : Plots.all(facts, RegulatorFeed.class)) {
      window(feed.part(), feed.neededVolts(), feed.maximumVolts(), feed.fullVolts(), "in+", "in-");
    }
  }

  private void fedParts() {
    for (Feed feed : Plots.all(facts, Feed.class)) {
      boolean receiver = feed.kind() == Kind.RECEIVER;
      window(
          feed.part(),
          feed.minimumVolts(),
          feed.maximumVolts(),
          feed.fullVolts(),
          receiver ? "in+" : "in-a",
          receiver ? "in-" : "in-b");
    }
  }

  private void window(
      Fitted part, Amount least, Amount most, Amount full, String plus, String minus) {
    List<Mark> marks = new ArrayList<>();
    marks.add(Mark.of(Meaning.TAKES_LEAST, least));
    marks.add(Mark.of(Meaning.TAKES_MOST, most));
    for (LoadCase.Charge charge : LoadCase.Charge.values()) {
      if (charge == LoadCase.Charge.FULL) {
        marks.add(Mark.at(Meaning.NO_LOAD, charge, full));
      } else {
        marks.add(volts(part, charge, LoadCase.Drive.STANDING, plus, minus));
      }
      loaded(marks, part, charge, plus, minus);
    }
    rows.add(new Row(part.name(), part.described(), marks));
  }

  private void loaded(
      List<Mark> marks, Fitted part, LoadCase.Charge charge, String plus, String minus) {
    marks.add(volts(part, charge, LoadCase.Drive.CRUISING, plus, minus));
    marks.add(volts(part, charge, LoadCase.Drive.SLIPPING, plus, minus));
    marks.add(volts(part, charge, LoadCase.Drive.BLOCKED, plus, minus));
  }

  private Mark volts(
      Fitted part, LoadCase.Charge charge, LoadCase.Drive drive, String plus, String minus) {
    Meaning meaning = Meaning.valueOf(drive.name());
    return Mark.at(meaning, charge, fed.volts(part, new LoadCase(charge, drive), plus, minus));
  }

  private void others() {
    for (HoldUpFeed feed : Plots.all(facts, HoldUpFeed.class)) {
      rows.add(
          new Row(
              feed.at().name(),
              feed.at().described(),
              List.of(
                  Mark.of(Meaning.TAKES_MOST, feed.ratedVolts()),
                  Mark.at(Meaning.NO_LOAD, LoadCase.Charge.FULL, feed.fullVolts()))));
    }
    for (MotorFeed feed : Plots.all(facts, MotorFeed.class)) {
      rows.add(
          new Row(
              feed.at().name(),
              feed.at().described(),
              rated(Meaning.TOP_STEP, feed.ratedVolts(), feed.fullVolts(), feed.nominalVolts())));
    }
    List<Alike.Keyed> bulbs = new ArrayList<>();
    for (BulbFeed feed : Plots.all(facts, BulbFeed.class)) {
      List<Mark> marks =
          rated(Meaning.STANDING, feed.ratedVolts(), feed.fullVolts(), feed.nominalVolts());
      Row row = new Row(feed.at().name(), feed.at().described(), marks);
      bulbs.add(new Alike.Keyed("bulb", row));
    }
    rows.addAll(Alike.together(bulbs));
  }

  private static List<Mark> rated(Meaning meaning, Amount rated, Amount full, Amount nominal) {
    return List.of(
        Mark.of(Meaning.RATED, rated),
        Mark.at(meaning, LoadCase.Charge.FULL, full),
        Mark.at(meaning, LoadCase.Charge.NOMINAL, nominal));
  }
}
